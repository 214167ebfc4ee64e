package runtrue.report.sheet;

import java.util.List;
import java.util.Locale;

/**
 * Parts of a drawing as XML (ISO/IEC 29500-1, 20.5 and 21.2), written out: loading the library's classes for them would cost
 * more than all else of a small workbook.
 */
final class DrawingXml {
    private static final String A = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static final String XDR = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    private static final String C = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static final String R = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final int EMU_PER_POINT = 12_700;

    private DrawingXml() {}

    static String drawing(List<String> anchors) {
        return HEAD + "<xdr:wsDr xmlns:xdr=\"" + XDR + "\" xmlns:a=\"" + A + "\">" + String.join("", anchors)
                + "</xdr:wsDr>";
    }

    static String image(int id, Overlay.Image image, String relation) {
        Overlay.Spot spot = image.spot();
        return anchor(
                spot,
                "<xdr:pic><xdr:nvPicPr>" + named(id, image.words())
                        + "<xdr:cNvPicPr><a:picLocks noChangeAspect=\"1\"/></xdr:cNvPicPr></xdr:nvPicPr>"
                        + "<xdr:blipFill><a:blip xmlns:r=\"" + R + "\" r:embed=\"" + relation
                        + "\"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>"
                        + "<xdr:spPr><a:xfrm><a:off x=\"0\" y=\"0\"/><a:ext " + size(spot)
                        + "/></a:xfrm><a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>");
    }

    static String frame(int id, Overlay.Bars bars, String relation) {
        return anchor(
                bars.spot(),
                "<xdr:graphicFrame macro=\"\"><xdr:nvGraphicFramePr>" + named(id, bars.words())
                        + "<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>"
                        + "<xdr:xfrm><a:off x=\"0\" y=\"0\"/><a:ext cx=\"0\" cy=\"0\"/></xdr:xfrm>"
                        + "<a:graphic><a:graphicData uri=\"" + C + "\"><c:chart xmlns:c=\"" + C + "\" xmlns:r=\"" + R
                        + "\" r:id=\"" + relation + "\"/></a:graphicData></a:graphic></xdr:graphicFrame>");
    }

    private static String anchor(Overlay.Spot spot, String content) {
        return "<xdr:oneCellAnchor><xdr:from><xdr:col>" + spot.column()
                + "</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>"
                + spot.row() + "</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext " + size(spot) + "/>" + content
                + "<xdr:clientData/></xdr:oneCellAnchor>";
    }

    private static String size(Overlay.Spot spot) {
        return "cx=\"" + Math.round(spot.width() * EMU_PER_POINT) + "\" cy=\""
                + Math.round(spot.height() * EMU_PER_POINT) + "\"";
    }

    private static String named(int id, String words) {
        return "<xdr:cNvPr id=\"" + id + "\" name=\"Picture " + id + "\" descr=\"" + escaped(words) + "\"/>";
    }

    /** Bars from the top down, each with its number at its end, without axis, grid or key: names stand beside them. */
    static String chart(Overlay.Bars bars) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < bars.colours().size(); i++) {
            points.append("<c:dPt><c:idx val=\"")
                    .append(i)
                    .append("\"/><c:invertIfNegative val=\"0\"/><c:bubble3D val=\"0\"/>"
                            + "<c:spPr><a:solidFill><a:srgbClr val=\"")
                    .append(String.format(Locale.ROOT, "%06X", bars.colours().get(i)))
                    .append("\"/></a:solidFill></c:spPr></c:dPt>");
        }
        int last = bars.names().size();
        return HEAD + "<c:chartSpace xmlns:c=\"" + C + "\" xmlns:a=\"" + A + "\"><c:roundedCorners val=\"0\"/>"
                + "<c:chart><c:autoTitleDeleted val=\"1\"/><c:plotArea><c:layout/>"
                + "<c:barChart><c:barDir val=\"bar\"/><c:grouping val=\"clustered\"/><c:varyColors val=\"0\"/>"
                + "<c:ser><c:idx val=\"0\"/><c:order val=\"0\"/>" + points
                + "<c:dLbls><c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>" + text()
                + "<c:dLblPos val=\"outEnd\"/><c:showLegendKey val=\"0\"/><c:showVal val=\"1\"/><c:showCatName val=\"0\"/>"
                + "<c:showSerName val=\"0\"/><c:showPercent val=\"0\"/><c:showBubbleSize val=\"0\"/></c:dLbls>"
                + "<c:cat><c:strRef><c:f>" + range(bars, bars.nameColumn()) + "</c:f><c:strCache><c:ptCount val=\""
                + last
                + "\"/>" + cached(bars.names()) + "</c:strCache></c:strRef></c:cat>"
                + "<c:val><c:numRef><c:f>" + range(bars, bars.nameColumn() + 1)
                + "</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val=\"" + last + "\"/>"
                + cached(bars.values()) + "</c:numCache></c:numRef></c:val></c:ser>"
                + "<c:gapWidth val=\"40\"/><c:axId val=\"1\"/><c:axId val=\"2\"/></c:barChart>"
                + "<c:catAx><c:axId val=\"1\"/><c:scaling><c:orientation val=\"maxMin\"/></c:scaling><c:delete val=\"0\"/>"
                + "<c:axPos val=\"l\"/><c:majorTickMark val=\"none\"/><c:minorTickMark val=\"none\"/>"
                + "<c:tickLblPos val=\"low\"/>" + text() + "<c:crossAx val=\"2\"/></c:catAx>"
                + "<c:valAx><c:axId val=\"2\"/><c:scaling><c:orientation val=\"minMax\"/><c:min val=\"0\"/></c:scaling>"
                + "<c:delete val=\"1\"/><c:axPos val=\"t\"/><c:crossAx val=\"1\"/></c:valAx>"
                + "</c:plotArea><c:plotVisOnly val=\"1\"/></c:chart>"
                + "<c:spPr><a:solidFill><a:srgbClr val=\"FFFFFF\"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr>"
                + "</c:chartSpace>";
    }

    private static String text() {
        return "<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz=\"900\"><a:solidFill><a:srgbClr val=\"263238\"/></a:solidFill>"
                + "<a:latin typeface=\"Arial\"/></a:defRPr></a:pPr><a:endParaRPr lang=\"en-GB\"/></a:p></c:txPr>";
    }

    private static String cached(List<?> values) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < values.size(); i++) {
            points.append("<c:pt idx=\"")
                    .append(i)
                    .append("\"><c:v>")
                    .append(escaped(String.valueOf(values.get(i))))
                    .append("</c:v></c:pt>");
        }
        return points.toString();
    }

    private static String range(Overlay.Bars bars, int column) {
        char letter = (char) ('A' + column);
        int first = bars.firstRow() + 1;
        return escaped("'" + bars.sheet().replace("'", "''") + "'!$" + letter + "$" + first + ":$" + letter + "$"
                + (first + bars.names().size() - 1));
    }

    private static String escaped(String text) {
        return CellText.clean(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\n", " ");
    }
}
