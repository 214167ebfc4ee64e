package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Sheet;
import runtrue.roof.Span;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.rules.OrderLengths;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;

/** Sheets and spans of a plane as subjects. */
public final class PlaneParts {
    private final PlaneLayout layout;
    private final Subject plane;
    private final Vector3D origin;
    private final OrderLengths lengths;
    private final Drainage drainage;

    public PlaneParts(PlaneLayout layout, Subject plane, Vector3D origin, OrderLengths lengths, Drainage drainage) {
        this.drainage = drainage;
        this.layout = layout;
        this.plane = plane;
        this.origin = origin;
        this.lengths = lengths;
    }

    public List<Subject> sheets() {
        List<Subject> subjects = new ArrayList<>();
        for (Sheet sheet : layout.sheets()) {
            Facts facts = plane.facts()
                    .inner()
                    .know("sheet.number", sheet.number(), "from the set-out verge")
                    .know("sheet.length", sheet.length(), "longest line along the fall within the strip")
                    .know("sheet.order_length", lengths.of(sheet), lengths.method())
                    .know("sheet.width", sheet.u().length(), "")
                    .know("sheet.area", sheet.area(), "")
                    .know("sheet.trimmed", sheet.trimmed(), "")
                    .know("sheet.tapered", sheet.tapered(), "")
                    .know("sheet.cut", sheet.cut(), "");
            drainage.add(sheet, facts);
            Subject subject = new Subject(
                    SubjectKind.SHEET,
                    "sheet " + sheet.number() + " of " + plane.name(),
                    plane.plane(),
                    plane.elements(),
                    Optional.of(middle(sheet.u(), sheet.v())),
                    key("sheet", sheet.u(), sheet.v()),
                    facts);
            subjects.add(subject.inSeries("sheet", sheet.number()));
        }
        return subjects;
    }

    public List<Subject> spans() {
        List<Subject> subjects = new ArrayList<>();
        for (Span span : layout.spans()) {
            Optional<SupportLine> lower = line(span.lower());
            Optional<SupportLine> upper = line(span.upper());
            Facts facts = plane.facts()
                    .inner()
                    .know("span.kind", span.kind().label(), "")
                    .know("span.length", span.length(), "along the fall between the lines")
                    .know("span.lower", span.lower(), "")
                    .know("span.upper", span.upper(), "");
            Set<Element> purlins = new LinkedHashSet<>();
            lower.ifPresent(line -> purlins.addAll(purlins(line, span.u())));
            upper.ifPresent(line -> purlins.addAll(purlins(line, span.u())));
            Stretch stretch = new Stretch(span.kind(), number(lower), number(upper), span.u(), span.v(), width());
            Subject subject = new Subject(
                    SubjectKind.SPAN,
                    Stretch.name(List.of(stretch)) + " of " + plane.name(),
                    plane.plane(),
                    List.copyOf(purlins),
                    Optional.of(middle(span.u(), span.v())),
                    key(span.kind().label(), span.u(), span.v()),
                    facts);
            subjects.add(subject.over(stretch));
        }
        return subjects;
    }

    private Interval width() {
        Envelope envelope = layout.plane().outline().getEnvelopeInternal();
        return new Interval(envelope.getMinX(), envelope.getMaxX());
    }

    private static int number(Optional<SupportLine> line) {
        return line.map(SupportLine::number).orElse(0);
    }

    private Optional<SupportLine> line(String id) {
        return layout.supports().stream().filter(line -> line.id().equals(id)).findFirst();
    }

    private static List<Element> purlins(SupportLine line, Interval u) {
        return line.pieces().stream()
                .filter(piece -> piece.uTo() >= u.from() && piece.uFrom() <= u.to())
                .map(SupportPiece::element)
                .toList();
    }

    private Vector3D middle(Interval u, Interval v) {
        return layout.plane()
                .at((u.from() + u.to()) / 2, (v.from() + v.to()) / 2)
                .add(origin);
    }

    /**
     * By place, to half a metre: finer would change the id with every nudge of the model, and the numbers of support
     * lines change with every purlin added below.
     */
    private static String key(String what, Interval u, Interval v) {
        return String.format(
                Locale.ROOT, "%s|%d|%d", what, Math.round(u.from() + u.to()), Math.round(v.from() + v.to()));
    }
}
