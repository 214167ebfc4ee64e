package runtrue.step;

import java.nio.charset.StandardCharsets;

/** Puts records into a whole exchange structure. */
public final class Text21 {
    private Text21() {}

    /** A file whose first record stands on line 5. */
    public static String file(String records) {
        return "ISO-10303-21;\nHEADER;FILE_DESCRIPTION((''),'2;1');FILE_NAME('n','t',(''),(''),'p','o','a');"
                + "FILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n" + records + "\nENDSEC;\nEND-ISO-10303-21;\n";
    }

    public static StepFile open(String text) {
        return StepFile.of("model.ifc", text.getBytes(StandardCharsets.ISO_8859_1));
    }

    public static StepFile openRecords(String records) {
        return open(file(records));
    }

    /** The single attribute of {@code #1=A(...)}. */
    public static StepValue value(String attribute) {
        return openRecords("#1=A(" + attribute + ");").instance(1).attributes().get(0);
    }
}
