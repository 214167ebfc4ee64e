package runtrue.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import runtrue.step.StepFile;

/**
 * Indexing of one STEP file in the page cache: {@link #warm} in megabytes (10^6 bytes) a second, {@link #cold} as the
 * time of the first indexing in a new process. {@code -p file=model.ifc} chooses the file; without it one is made.
 */
@State(Scope.Benchmark)
@Fork(1)
public class IndexBenchmark {
    private static final int MADE_WALLS = 120_000;

    /** The file to index; empty for one made for the purpose, about 60 MB of points, lists, strings and relations. */
    @Param("")
    public String file = "";

    private @Nullable Path made;
    private Path path = Path.of("");
    private double megabytes;

    /** What was read, in megabytes; shown a second. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Read {
        public double megabytes;
    }

    @Setup(Level.Trial)
    public void prepare() throws IOException {
        if (file.isEmpty()) {
            made = Files.createTempFile("index-benchmark", ".ifc");
            write(made);
        }
        path = made != null ? made : Path.of(file);
        megabytes = Files.size(path) / 1e6;
    }

    @TearDown(Level.Trial)
    public void remove() throws IOException {
        if (made != null) {
            Files.deleteIfExists(made);
        }
    }

    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    public int warm(Read read) {
        read.megabytes += megabytes;
        return index();
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Fork(5)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public int cold() {
        return index();
    }

    private int index() {
        try (StepFile step = StepFile.open(path)) {
            return step.size();
        }
    }

    private static void write(Path target) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(target, StandardCharsets.US_ASCII)) {
            out.write("""
                    ISO-10303-21;
                    HEADER;
                    FILE_DESCRIPTION((''),'2;1');
                    FILE_NAME('','',(''),(''),'','','');
                    FILE_SCHEMA(('IFC4'));
                    ENDSEC;
                    DATA;
                    """);
            for (int wall = 0; wall < MADE_WALLS; wall++) {
                out.write(records(wall));
            }
            out.write("ENDSEC;\nEND-ISO-10303-21;\n");
        }
    }

    /** Eight records with a point, a placement, a property set and the relation to it; the numbers mean nothing. */
    private static String records(int wall) {
        int id = 8 * wall + 1;
        return String.format(
                Locale.ROOT, """
                #%1$d=IFCCARTESIANPOINT((%9$.6f,-%9$.6f,0.));
                #%2$d=IFCDIRECTION((0.,0.,1.));
                #%3$d=IFCAXIS2PLACEMENT3D(#%1$d,#%2$d,$);
                #%4$d=IFCLOCALPLACEMENT($,#%3$d);
                #%5$d=IFCPROPERTYSINGLEVALUE('Reference',$,IFCIDENTIFIER('wall %10$d'),$);
                #%6$d=IFCPROPERTYSET('A%10$021d',$,'Pset_WallCommon',$,(#%5$d));
                #%7$d=IFCWALL('B%10$021d',$,'Wall; it''s no. %10$d',$,$,#%4$d,$,$,.STANDARD.);
                #%8$d=IFCRELDEFINESBYPROPERTIES('C%10$021d',$,$,$,(#%7$d),#%6$d);
                """, id, id + 1, id + 2, id + 3, id + 4, id + 5, id + 6, id + 7, wall * 0.37, wall);
    }
}
