package runtrue.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
import runtrue.bill.Bill;
import runtrue.ifc.IfcModel;
import runtrue.result.CheckResult;
import runtrue.roof.Roof;
import runtrue.roof.read.DropElements;
import runtrue.shape.Shape;
import runtrue.step.StepFile;

/**
 * Time of each stage of a check. By default as in a real run: once, in a new process that has run the stages before it
 * and nothing else, so most of what is seen on a small drop is Java warming up. {@code -bm avgt -wi 5 -i 5 -f 1} shows
 * the warm times. {@code -p drop=FOLDER-OR-FILE} chooses the drop. Each state below is what a stage starts from.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(5)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@SuppressWarnings("NullAway.Init") // states are filled by their @Setup
public class StagesBenchmark {
    /** The drop, not opened. */
    @State(Scope.Benchmark)
    public static class Given {
        /** A folder with models, or one model. */
        @Param("sample-models/kiln-hall")
        public String drop = "";

        Stages stages;

        @Setup(Level.Trial)
        public void prepare() {
            stages = Stages.of(Path.of(drop));
        }
    }

    /** The drop with its files indexed. */
    @State(Scope.Benchmark)
    public static class Indexed {
        List<StepFile> files;

        @Setup(Level.Trial)
        public void prepare(Given given) {
            files = given.stages.index();
        }

        @TearDown(Level.Trial)
        public void close() {
            files.forEach(StepFile::close);
        }
    }

    /** Roof elements and members found; no shape read. */
    @State(Scope.Benchmark)
    public static class Found {
        List<IfcModel> models;
        Stages.Found found;

        @Setup(Level.Trial)
        public void prepare(Given given, Indexed indexed) {
            models = given.stages.models(indexed.files);
            found = given.stages.find(models);
        }
    }

    /** Shapes read. */
    @State(Scope.Benchmark)
    public static class Read {
        DropElements elements;

        @Setup(Level.Trial)
        public void prepare(Given given, Found found) {
            elements = given.stages.elements(found.models);
        }
    }

    /** Planes, sheets and supports laid out, and the rule set compiled. */
    @State(Scope.Benchmark)
    public static class LaidOut {
        Roof roof;
        Stages.Rules rules;

        @Setup(Level.Trial)
        public void prepare(Given given, Read read) {
            roof = given.stages.layOut(read.elements);
            rules = given.stages.rules();
        }
    }

    /** Judged, and quantities taken off. */
    @State(Scope.Benchmark)
    public static class Judged {
        Bill bill;
        Stages.Judged judged;

        @Setup(Level.Trial)
        public void prepare(Given given, LaidOut laidOut) {
            judged = given.stages.judge(laidOut.roof, laidOut.rules);
            bill = given.stages.bill(laidOut.roof, judged.zones());
        }
    }

    /** The result, not written. */
    @State(Scope.Benchmark)
    public static class Concluded {
        CheckResult result;

        @Setup(Level.Trial)
        public void prepare(Given given, Read read, LaidOut laidOut, Judged judged) {
            result = given.stages.result(read.elements, laidOut.roof, judged.bill, judged.judged);
        }
    }

    @Benchmark
    public int stage1Index(Given given) {
        List<StepFile> files = given.stages.index();
        int instances = files.stream().mapToInt(StepFile::size).sum();
        files.forEach(StepFile::close);
        return instances;
    }

    @Benchmark
    public Object stage2Find(Given given, Indexed indexed) {
        return given.stages.find(given.stages.models(indexed.files));
    }

    @Benchmark
    public List<Shape> stage3Shapes(Given given, Found found) {
        return given.stages.shapes(found.found);
    }

    @Benchmark
    public Roof stage4LayOut(Given given, Read read) {
        return given.stages.layOut(read.elements);
    }

    /** Runs beside the stages above in a check. */
    @Benchmark
    public Object stage5CompileRules(Given given) {
        return given.stages.rules();
    }

    @Benchmark
    public Object stage6Judge(Given given, LaidOut laidOut) {
        return given.stages.judge(laidOut.roof, laidOut.rules);
    }

    @Benchmark
    public Bill stage7TakeOff(Given given, LaidOut laidOut, Judged judged) {
        return given.stages.bill(laidOut.roof, judged.judged.zones());
    }

    @Benchmark
    public CheckResult stage8Result(Given given, Read read, LaidOut laidOut, Judged judged) {
        return given.stages.result(read.elements, laidOut.roof, judged.bill, judged.judged);
    }

    @Benchmark
    public void stage9Write(Concluded concluded) throws IOException {
        Stages.write(concluded.result);
    }
}
