package runtrue.ifc.internal;

import java.util.List;
import java.util.Map;
import runtrue.ifc.IfcEntity;

/** Finds the unit assignment that holds for a file with one project, several or none. */
final class ProjectUnits {
    private ProjectUnits() {}

    static Map<String, UnitFactor> read(StepModel model, List<IfcEntity> projects, UnitReader reader, NoteList notes) {
        if (projects.isEmpty()) {
            notes.add("The file has no project; the first unit assignment in it is used, if there is any.");
            List<IfcEntity> assignments = model.all("IfcUnitAssignment");
            return assignments.isEmpty() ? Map.of() : reader.read(assignments.get(0));
        }
        Map<String, UnitFactor> units = of(projects.get(0), reader);
        if (projects.size() > 1) {
            notes.add("The file has " + projects.size() + " projects; the units of "
                    + projects.get(0).label() + " are used.");
            for (IfcEntity other : projects.subList(1, projects.size())) {
                if (!of(other, reader).equals(units)) {
                    notes.add("The units of " + other.label()
                            + " differ from those used; its elements are read wrongly.");
                }
            }
        }
        return units;
    }

    private static Map<String, UnitFactor> of(IfcEntity project, UnitReader reader) {
        return project.optionalRef("UnitsInContext").map(reader::read).orElse(Map.of());
    }
}
