package runtrue.ifc.select;

import java.util.List;
import java.util.Set;

/**
 * What counts as roof and as possible support. The first selector that holds for an element gives its evidence, so the
 * surer ones come first.
 *
 * @param roofs elements that are roof
 * @param roofParts classes that are roof when they are parts, at any depth, of an element that is
 * @param supports elements that may carry the roof; position decides later which of them do
 * @param excluded elements that are neither, whatever the other lists say
 */
public record Selection(List<Selector> roofs, Set<String> roofParts, List<Selector> supports, List<Selector> excluded) {
    /** An element of which the model says no more than that it is built; there are such from IFC4X3 on. */
    static final String BARE = "IfcBuiltElement";

    private static final String[] UNSTATED = {"", "NOTDEFINED", "USERDEFINED"};

    public Selection {
        roofs = List.copyOf(roofs);
        roofParts = Set.copyOf(roofParts);
        supports = List.copyOf(supports);
        excluded = List.copyOf(excluded);
    }

    /**
     * Roofs by class, type, aggregation and, last, by names in many languages; beams and members as supports, except
     * those typed as something that no sheet rests on.
     */
    public static Selection standard() {
        return new Selection(
                List.of(
                        Selector.ofClass("IfcRoof"),
                        Selector.ofClass("IfcSlab").withTypes("ROOF"),
                        Selector.ofClass("IfcCovering").withTypes("ROOFING"),
                        Selector.ofClass("IfcSlab", "IfcBuildingElementProxy").withName(Names.ROOF),
                        Selector.ofClass("IfcCovering", "IfcCourse", "IfcElementAssembly")
                                .withTypes(UNSTATED)
                                .withName(Names.ROOF),
                        Selector.ofNoSubtypeOf(BARE).withName(Names.ROOF)),
                Set.of(
                        "IfcSlab",
                        "IfcPlate",
                        "IfcCovering",
                        "IfcRoof",
                        "IfcCourse",
                        "IfcBuildingElementPart",
                        "IfcBuildingElementProxy"),
                List.of(
                        Selector.ofClass("IfcMember").withTypes("PURLIN", "RAFTER"),
                        Selector.ofClass("IfcBeam").withTypes("JOIST"),
                        Selector.ofClass("IfcBeam", "IfcMember").withName(Names.PURLIN),
                        Selector.ofClass("IfcBeam", "IfcMember")),
                List.of(
                        Selector.ofClass("IfcMember")
                                .withTypes(
                                        "BRACE",
                                        "MULLION",
                                        "POST",
                                        "STAY_CABLE",
                                        "STIFFENING_RIB",
                                        "STRINGER",
                                        "STRUCTURALCABLE",
                                        "STUD",
                                        "SUSPENDER",
                                        "SUSPENSION_CABLE",
                                        "TIEBAR"),
                        Selector.ofClass("IfcBeam")
                                .withTypes("CORNICE", "DIAPHRAGM", "GIRDER_SEGMENT", "HATSTONE", "LINTEL", "PIERCAP")));
    }
}
