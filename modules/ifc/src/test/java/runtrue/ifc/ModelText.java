package runtrue.ifc;

import java.nio.charset.StandardCharsets;
import runtrue.step.StepFile;

/** Small models written in tests, without the parts of a STEP file that are always the same. */
public final class ModelText {
    private ModelText() {}

    /** A model of the DATA lines given, in a file called test.ifc. */
    public static IfcModel model(String schema, String data) {
        String text = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
                + "FILE_SCHEMA(('" + schema + "'));\nENDSEC;\nDATA;\n" + data + "\nENDSEC;\nEND-ISO-10303-21;\n";
        return IfcModel.of(StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1)));
    }
}
