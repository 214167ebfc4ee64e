package runtrue.roof.models;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.roof.read.DropElements;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** One model file read as a drop of its own, and what was made of its roofs. */
record ReadModel(DropElements elements, Roof roof) {
    static ReadModel read(Path path) {
        try (StepFile file = StepFile.open(path)) {
            IfcModel model = IfcModel.of(file);
            Tolerances tolerances = Tolerances.standard();
            DropElements elements = DropElements.read(List.of(model), Selection.standard(), tolerances);
            RoofSettings settings = new RoofSettings(
                    0.5, SetOut.LEFT, OptionalDouble.empty(), 0.6, elements.origin(), model.trueNorth(), tolerances);
            return new ReadModel(
                    elements, Roofs.layOut(elements.roofs(), elements.members(), elements.surround(), settings));
        }
    }

    /** Planes that an element is part of. */
    List<RoofPlane> planesOf(String globalId) {
        return roof.planes().stream()
                .map(layout -> layout.plane())
                .filter(plane -> plane.elements().stream()
                        .anyMatch(e -> e.element().globalId().equals(globalId)))
                .toList();
    }

    /** Why an element is in no plane: not read, or read and not placed. */
    Optional<String> reasonFor(String globalId) {
        return elements.unread().stream()
                .filter(u -> u.element().globalId().equals(globalId))
                .map(u -> "unread: " + u.why().reason())
                .findFirst()
                .or(() -> roof.unplaced().stream()
                        .filter(u -> u.element().element().globalId().equals(globalId))
                        .map(u -> "unplaced: " + u.reason())
                        .findFirst());
    }
}
