package runtrue.roof.stated;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.Roof;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.roof.read.DropElements;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** A model file read as a drop of its own, kept open. */
public record OpenModel(StepFile file, IfcModel model, DropElements elements, Roof roof) implements AutoCloseable {
    public static OpenModel read(Path path) {
        return of(StepFile.open(path));
    }

    /** A model of DATA lines alone. */
    public static OpenModel of(String schema, String data) {
        String text = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\n"
                + "FILE_SCHEMA(('" + schema + "'));\nENDSEC;\nDATA;\n" + data + "\nENDSEC;\nEND-ISO-10303-21;\n";
        return of(StepFile.of("test.ifc", text.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static OpenModel of(StepFile file) {
        IfcModel model = IfcModel.of(file);
        Tolerances tolerances = Tolerances.standard();
        DropElements elements = DropElements.read(List.of(model), Selection.standard(), tolerances);
        RoofSettings settings = new RoofSettings(
                0.5, SetOut.LEFT, OptionalDouble.empty(), 0.6, elements.origin(), model.trueNorth(), tolerances);
        return new OpenModel(file, model, elements, Roofs.layOut(elements.roofs(), elements.members(), settings));
    }

    List<StatedValue> stated() {
        return StatedValues.of(List.of(model), elements, roof, StatedTolerances.standard());
    }

    @Override
    public void close() {
        file.close();
    }
}
