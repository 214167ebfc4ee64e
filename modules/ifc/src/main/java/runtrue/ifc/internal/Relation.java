package runtrue.ifc.internal;

/** The relationships that are followed: class, attribute of the one, attribute of the many. */
enum Relation {
    AGGREGATES("IfcRelAggregates", "RelatingObject", "RelatedObjects"),
    NESTS("IfcRelNests", "RelatingObject", "RelatedObjects"),
    CONTAINED("IfcRelContainedInSpatialStructure", "RelatingStructure", "RelatedElements"),
    VOIDS("IfcRelVoidsElement", "RelatingBuildingElement", "RelatedOpeningElement"),
    FILLS("IfcRelFillsElement", "RelatingOpeningElement", "RelatedBuildingElement"),
    TYPES("IfcRelDefinesByType", "RelatingType", "RelatedObjects"),
    PROPERTIES("IfcRelDefinesByProperties", "RelatingPropertyDefinition", "RelatedObjects"),
    MATERIALS("IfcRelAssociatesMaterial", "RelatingMaterial", "RelatedObjects"),
    CLASSIFICATIONS("IfcRelAssociatesClassification", "RelatingClassification", "RelatedObjects");

    final String className;
    final String one;
    final String many;

    Relation(String className, String one, String many) {
        this.className = className;
        this.one = one;
        this.many = many;
    }
}
