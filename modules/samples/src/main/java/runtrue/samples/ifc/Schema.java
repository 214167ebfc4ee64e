package runtrue.samples.ifc;

/** The schemas written. Attributes that differ are told apart by {@link #isFromIfc4}. */
public enum Schema {
    IFC2X3("IFC2X3", "ViewDefinition [CoordinationView_V2.0]"),
    IFC4("IFC4", "ViewDefinition [DesignTransferView_V1.0]"),
    IFC4X3("IFC4X3_ADD2", "ViewDefinition [NotAssigned]");

    private final String identifier;
    private final String view;

    Schema(String identifier, String view) {
        this.identifier = identifier;
        this.view = view;
    }

    String identifier() {
        return identifier;
    }

    String view() {
        return view;
    }

    boolean isFromIfc4() {
        return this != IFC2X3;
    }
}
