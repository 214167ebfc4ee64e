package runtrue.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import runtrue.drop.Drop;
import runtrue.drop.DropException;
import runtrue.drop.ModelFile;

/** Checks drops one after another and writes each one's files as soon as it is done. A drop that fails stops no other. */
final class Batch {
    private final DropCheck check;
    private final OutputFolder output;
    private final int threads;
    private final ProgressDisplay.Style style;
    private final PrintWriter err;

    Batch(DropCheck check, OutputFolder output, int threads, ProgressDisplay.Style style, PrintWriter err) {
        this.check = check;
        this.output = output;
        this.threads = threads;
        this.style = style;
        this.err = err;
    }

    /** In the order given. Throws {@link CheckException} only when it concerns every drop. */
    List<DropReport> run(List<Drop> drops) {
        List<DropReport> reports = new ArrayList<>();
        for (Drop drop : drops) {
            String title = drops.size() == 1
                    ? drop.name()
                    : String.format(Locale.ROOT, "%d/%d %s", reports.size() + 1, drops.size(), drop.name());
            if (style == ProgressDisplay.Style.LINES) {
                err.println(title + ": " + inputs(drop));
                err.flush();
            }
            reports.add(run(drop, title));
        }
        return reports;
    }

    @SuppressWarnings("TooBroadCatch") // the last line of defence of a batch
    private DropReport run(Drop drop, String title) {
        try {
            return DropReport.done(drop.name(), checkAndWrite(drop, title));
        } catch (CheckException e) {
            if (e.stopsBatch()) {
                throw e;
            }
            tell(drop, e.getMessage());
            return DropReport.unreadable(drop.name());
        } catch (DropException e) {
            tell(drop, e.getMessage());
            return DropReport.unreadable(drop.name());
        } catch (OutputException e) {
            tell(drop, e.getMessage());
            return DropReport.failed(drop.name());
        } catch (OutOfMemoryError e) {
            tell(
                    drop,
                    "needs more memory than the " + (Runtime.getRuntime().maxMemory() >> 20)
                            + " MB it may use. Give more with RUNTRUE_OPTS=-Xmx8g, or check fewer files at once.");
            return DropReport.failed(drop.name());
        } catch (RuntimeException | StackOverflowError | LinkageError | AssertionError e) {
            FaultReport.print(err, "drop " + drop.name() + ", " + inputs(drop), e);
            return DropReport.failed(drop.name());
        }
    }

    private CheckedDrop checkAndWrite(Drop drop, String title) {
        try (ProgressDisplay display = new ProgressDisplay(title, style, err)) {
            CheckedDrop checked = check.check(drop, display.progress());
            checked.notes().forEach(note -> tell(drop, note));
            display.progress().stage(Stage.WRITING, 0);
            output.write(drop.name(), checked.files(), threads);
            return checked;
        }
    }

    private void tell(Drop drop, @Nullable String message) {
        err.println(drop.name() + ": " + message);
        err.flush();
    }

    private static String inputs(Drop drop) {
        String names = String.join(
                ", ", drop.files().stream().map(ModelFile::name).limit(5).toList());
        String more = drop.files().size() > 5 ? " and " + (drop.files().size() - 5) + " more" : "";
        return String.format(Locale.ROOT, "%s%s (%.1f MB)", names, more, drop.size() / 1e6);
    }
}
