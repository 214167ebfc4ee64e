package runtrue.report.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Puts pictures and charts into a workbook, as parts of its package beside the sheets. */
final class Drawings {
    private static final String RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
    private static final String DRAWING = "application/vnd.openxmlformats-officedocument.drawing+xml";
    private static final String CHART = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

    private final OPCPackage parts;
    private int drawings;
    private int images;
    private int charts;

    Drawings(OPCPackage parts) {
        this.parts = parts;
    }

    void apply(Overlay over, XSSFSheet sheet) throws IOException {
        if (over.images().isEmpty() && over.bars().isEmpty()) {
            return;
        }
        try {
            PackagePart drawing = part("/xl/drawings/drawing" + ++drawings + ".xml", DRAWING);
            List<String> anchors = new ArrayList<>();
            for (Overlay.Image image : over.images()) {
                PackagePart png = part("/xl/media/image" + ++images + ".png", "image/png");
                fill(png, image.png().get());
                anchors.add(DrawingXml.image(anchors.size() + 1, image, relate(drawing, png, "image")));
            }
            if (over.bars().isPresent()) {
                PackagePart chart = part("/xl/charts/chart" + ++charts + ".xml", CHART);
                fill(chart, bytes(DrawingXml.chart(over.bars().get())));
                anchors.add(DrawingXml.frame(anchors.size() + 1, over.bars().get(), relate(drawing, chart, "chart")));
            }
            fill(drawing, bytes(DrawingXml.drawing(anchors)));
            sheet.getCTWorksheet().addNewDrawing().setId(relate(sheet.getPackagePart(), drawing, "drawing"));
        } catch (InvalidFormatException e) {
            throw new IllegalStateException("a part's name of our own is none", e);
        }
    }

    private PackagePart part(String name, String type) throws InvalidFormatException {
        PackagePartName partName = PackagingURIHelper.createPartName(name);
        return parts.createPart(partName, type);
    }

    private static String relate(PackagePart from, PackagePart to, String kind) {
        return from.addRelationship(to.getPartName(), TargetMode.INTERNAL, RELATION + kind)
                .getId();
    }

    private static byte[] bytes(String xml) {
        return xml.getBytes(StandardCharsets.UTF_8);
    }

    private static void fill(PackagePart part, byte[] bytes) throws IOException {
        try (OutputStream out = part.getOutputStream()) {
            out.write(bytes);
        }
    }
}
