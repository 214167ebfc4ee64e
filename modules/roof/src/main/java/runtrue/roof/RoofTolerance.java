package runtrue.roof;

import runtrue.roof.Bound.Unit;

/**
 * What the recognition of roofs takes for the same, near, level, narrow and so on: common practice, no source, unless a
 * reason says otherwise. Printed with each result, so that a figure that hangs on one of these can be traced to it.
 */
@SuppressWarnings("ImmutableEnumChecker") // a record of immutable parts, but it carries no annotation
public enum RoofTolerance {
    STEEPEST_ROOF("steepest roof", Unit.DEGREE, 87, "Steeper faces are walls to a roofer."),
    SKEW_CUT(
            "width of a cut edge",
            Unit.FACTOR,
            1.6,
            "Times the slab's thickness: edges cut askew are up to half as wide again as it is thick."),
    DEEPEST_BUILD_UP(
            "deepest build-up",
            Unit.METRE,
            0.8,
            "Faces within this below another are layers of one roof; two roofs one above the other stand farther apart."),
    COVERED("mostly covered", Unit.FACTOR, 0.7, "Share of a face under others from which it counts as an inner layer."),
    TAPER(
            "taper between layers",
            Unit.DEGREE,
            5,
            "Tapered insulation falls at less; steeper bodies are roofs of their own."),
    LAYER_RIM("rim of a layer", Unit.METRE, 0.6, "What sticks out of a covered layer by less than this is its edge."),
    RIB_FILL("fill of a ribbed section", Unit.FACTOR, 0.5, "A folded sheet fills less of the box around its section."),
    RIB_HEIGHT("height of a ribbed section", Unit.FACTOR, 0.3, "Ribs are low against the width of a sheet."),
    RIB_PANS("pans of a ribbed section", Unit.FACTOR, 0.25, "Share of the width that rests on the common underside."),
    FOLD_OF_CURVE("fold within a curve", Unit.DEGREE, 15, "A sheet does not follow a sharper fold by itself."),
    FACET_JOINT("joint of facets", Unit.METRE, 0.01, "Facets of one curved surface share their edges."),
    FOLD_ACROSS(
            "fold across the fall",
            Unit.DEGREE,
            37,
            "From square to the fall; hips lie at 45 degrees to the fall of one of their planes."),
    CORNER_FACET("corner facet", Unit.FACTOR, 2, "Times the facet it hangs on; a plane beside a vault is larger."),
    FACETS_ALONG(
            "facets along one axis",
            Unit.DEGREE,
            1,
            "Narrow facets drawn to a millimetre lie askew by this; a cone or a shell turns by more."),
    MOSTLY_ALONG(
            "facets of a barrel",
            Unit.FACTOR,
            0.98,
            "Share of the area along one axis from which a curved roof is a barrel; the rest is rounding."),
    CIRCLE("circular section", Unit.METRE, 0.01, "Folds of a circle drawn to a millimetre lie nearer to it than this."),
    CROWN_AT_END(
            "crown at the end of an arc",
            Unit.METRE,
            0.15,
            "An arc that goes on past its crown by less falls to one side only: a ridge flashing covers that much."),
    LEAST_WIDTH(
            "narrowest roof",
            Unit.METRE,
            0.3,
            "Strips narrower than half a sheet are folded from flat stock: mouldings, gutters and fascias."),
    PLANES_MEET("fold between planes", Unit.DEGREE, 0.5, "Planes nearer to parallel have no line of intersection."),
    EDGE_ALONG("edge along a fold", Unit.DEGREE, 10, "Sawn and stepped edges are out of line with the fold."),
    LEVEL_EDGE("level edge", Unit.DEGREE, 1, "Ridges and gutters are level within this; hips and valleys rise more."),
    VERGE_ALONG("verge along the fall", Unit.DEGREE, 20, "Water that meets a side at less than this runs along it."),
    GUTTER("widest gutter", Unit.METRE, 1.5, "Eaves that face each other across less share a gutter."),
    VALLEY(
            "widest valley",
            Unit.METRE,
            0.8,
            "A valley gutter of one sheet's width and the cut-back edges beside it; water of sloping sides so near runs in it."),
    RETURN("shortest edge", Unit.METRE, 0.1, "A shorter return is dressed with the flashing of the edge beside it."),
    BODY_STEP(
            "step within a roof", Unit.METRE, 0.5, "Adjoining planes with less between them are one roof to the wind."),
    WALL("wall beside an edge", Unit.METRE, 0.6, "A higher roof this near in plan stands on a wall along the edge."),
    STEP_HEIGHT(
            "greatest step",
            Unit.METRE,
            0.3,
            "Between parallel planes, square to them; over a greater one stands a wall, and the edge is an abutment."),
    STEP_GAP("step in plan", Unit.METRE, 0.2, "The sides of a step lie so near to each other, or lap by as much."),
    LEAST_WALL("least wall", Unit.METRE, 0.15, "A lesser rise is a step in the roof."),
    ZONE_JOG("jog in the outline", Unit.METRE, 0.05, "Smaller ones do not shift the wind zones."),
    GRID_NEAR("on a grid line", Unit.METRE, 0.3, "Nearer than this people say on the line, not between two."),
    GRID_FAMILY("grid lines of one family", Unit.DEGREE, 10, "Lines that run the same way are numbered together."),
    SUPPORT_REACH(
            "reach for supports",
            Unit.METRE,
            0.6,
            "Members farther below the plane carry something else, not its sheets."),
    MEMBER_SLENDER(
            "slenderness of a member", Unit.FACTOR, 1.5, "A body no longer than this times its width is a stub."),
    MEMBER_EDGES("edges of a member", Unit.DEGREE, 1, "Edges that run the same way within this show its axis."),
    SUPPORT_PARALLEL("support along the plane", Unit.DEGREE, 3, "A steeper member carries at one end only."),
    SUPPORT_INSIDE("support under the plane", Unit.METRE, 0.05, "A shorter crossing is a cleat or a bearing."),
    SUPPORT_ABOVE(
            "support above the plane", Unit.METRE, 0.05, "A member may stand this far out of the skin it carries."),
    CONTACT(
            "contact level",
            Unit.METRE,
            0.02,
            "A support is packed or pressed down by this; farther off it is not touched."),
    CONTACT_SHARE("share of a contact level", Unit.FACTOR, 0.3, "A level with less of all lengths is an exception."),
    RAFTER_ABOVE(
            "rafter above purlins", Unit.METRE, 0.03, "Members along the fall so much higher keep sheets off purlins."),
    SAME_LINE(
            "supports in one line",
            Unit.METRE,
            0.08,
            "Purlins lapped or sleeved at a frame are a flange's width apart."),
    FIXTURE_FOOT(
            "foot of a fixture",
            Unit.METRE,
            0.5,
            "Clamps, rails and plinths lift what is fixed on a roof off its skin by less; what begins higher hangs over it."),
    OFF_LEVEL(
            "member off the supports' level",
            Unit.METRE,
            0.06,
            "A member across the fall this little below the others was meant as a support; deeper ones carry other things."),
    LINE_SHORT(
            "bare end of a support line",
            Unit.METRE,
            0.5,
            "Verges, hips and valleys leave less free by any detail; more is a purlin cut short or left out."),
    LINE_ASKEW("support askew", Unit.DEGREE, 2, "Members laid square to the fall are drawn truer than this."),
    BATTEN_DEPTH("deepest batten", Unit.METRE, 0.065, "Deeper sections across the fall span as purlins."),
    BATTEN_SPACING("widest batten spacing", Unit.METRE, 0.65, "Battens lie closer than purlins ever do."),
    PROUD("proud of the supports", Unit.METRE, 0.001, "Models are drawn to whole millimetres."),
    PROUD_RIM(
            "rim of the sheeted area",
            Unit.METRE,
            0.1,
            "Along edges and openings flashings, trimmers and the next plane's members meet."),
    WALL_RIM(
            "walls along an edge",
            Unit.METRE,
            0.6,
            "Parapets and gable walls stand within this of an edge; the sheets end against them."),
    LINE_SPACING(
            "spacing in a bay",
            Unit.FACTOR,
            1.25,
            "Times the usual spacing in a bay that is set out for itself; where a line is missing, it is twice that."),
    LAYER_WIDTH("width of a layer", Unit.METRE, 0.5, "Broader things on the supports are decks or trays, not plates."),
    SPAN_GAP("joint within a long span", Unit.METRE, 0.002, "Stretches nearer than this are one place on the roof."),
    FLAT_PLANE("plane without fall", Unit.DEGREE, 0.2, "Less is within what models are drawn to.");

    private final Bound bound;

    RoofTolerance(String title, Unit unit, double value, String reason) {
        bound = new Bound(title, unit, value, reason);
    }

    public Bound bound() {
        return bound;
    }

    /** In metres, radians, or a bare factor. */
    public double si() {
        return bound.si();
    }
}
