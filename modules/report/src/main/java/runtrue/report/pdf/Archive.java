package runtrue.report.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.GregorianCalendar;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;

/** What makes a document fit to be kept: metadata and colours by ISO 19005-2 (PDF/A-2b). */
final class Archive {
    private static final String COLOURS = "sRGB IEC61966-2.1";

    private Archive() {}

    /**
     * Describes the document.
     *
     * @param stamp time of the run, ISO 8601 with zone
     * @param seed from which the document's id is made, so that the same result gives the same bytes
     */
    static void describe(PDDocument document, String title, String program, String stamp, String seed)
            throws IOException {
        GregorianCalendar time =
                GregorianCalendar.from(OffsetDateTime.parse(stamp).toZonedDateTime());
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setCreator(program);
        information.setProducer(program);
        information.setCreationDate(time);
        information.setModificationDate(time);
        document.setDocumentId((long) seed.hashCode());
        document.getDocumentCatalog().setLanguage("en");
        metadata(document, title, program, time);
        colours(document);
    }

    private static void metadata(PDDocument document, String title, String program, GregorianCalendar time)
            throws IOException {
        try {
            XMPMetadata metadata = XMPMetadata.createXMPMetadata();
            var archive = metadata.createAndAddPDFAIdentificationSchema();
            archive.setPart(2);
            archive.setConformance("B");
            metadata.createAndAddDublinCoreSchema().setTitle(title);
            metadata.createAndAddAdobePDFSchema().setProducer(program);
            var basic = metadata.createAndAddXMPBasicSchema();
            basic.setCreatorTool(program);
            basic.setCreateDate(time);
            basic.setModifyDate(time);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new XmpSerializer().serialize(metadata, bytes, true);
            PDMetadata stream = new PDMetadata(document);
            stream.importXMPMetadata(bytes.toByteArray());
            document.getDocumentCatalog().setMetadata(stream);
        } catch (BadFieldValueException | TransformerException e) {
            throw new IOException("The document's metadata could not be written: " + e.getMessage(), e);
        }
    }

    private static void colours(PDDocument document) throws IOException {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(COLOURS);
        intent.setOutputCondition(COLOURS);
        intent.setOutputConditionIdentifier(COLOURS);
        intent.setRegistryName("http://www.color.org");
        document.getDocumentCatalog().addOutputIntent(intent);
    }
}
