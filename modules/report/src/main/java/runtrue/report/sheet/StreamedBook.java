package runtrue.report.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.xssf.streaming.DeferredSXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A streamed workbook whose parts carry a fixed time, so that the same pages give the same bytes. */
final class StreamedBook extends DeferredSXSSFWorkbook {
    /** The earliest time that a zip entry can state. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    StreamedBook(XSSFWorkbook template) {
        super(template, 1);
    }

    @Override
    protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
        return new ZipArchiveOutputStream(out) {
            @Override
            public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
                entry.setTimeLocal(TIME);
                super.putArchiveEntry(entry);
            }
        };
    }
}
