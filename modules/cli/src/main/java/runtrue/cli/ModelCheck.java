package runtrue.cli;

import static java.time.ZoneOffset.UTC;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import runtrue.bill.Bill;
import runtrue.bill.Bills;
import runtrue.bill.modelled.ModelledCounts;
import runtrue.drop.Drop;
import runtrue.geometryserver.Comparison;
import runtrue.geometryserver.GeometryServer;
import runtrue.geometryserver.SecondEngine;
import runtrue.ifc.GridAxis;
import runtrue.report.Workbooks;
import runtrue.report.bcf.IssueFile;
import runtrue.report.drawing.RoofPlan;
import runtrue.report.drawing.RoofPlans;
import runtrue.report.exchange.CsvTables;
import runtrue.report.exchange.TestCases;
import runtrue.report.page.ReportPage;
import runtrue.report.pdf.FindingsPdf;
import runtrue.report.rates.RateException;
import runtrue.report.setout.SetOutDrawing;
import runtrue.result.CheckResult;
import runtrue.result.build.BillInput;
import runtrue.result.build.CheckInput;
import runtrue.result.build.RateList;
import runtrue.result.build.ResultBuilder;
import runtrue.result.build.Trust;
import runtrue.result.json.ResultJson;
import runtrue.roof.Roof;
import runtrue.roof.Roofs;
import runtrue.roof.Surround;
import runtrue.roof.Zone;
import runtrue.roof.health.ModelHealth;
import runtrue.roof.read.DropElements;
import runtrue.roof.stated.StatedTolerances;
import runtrue.roof.stated.StatedValue;
import runtrue.roof.stated.StatedValues;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.concede.Concession;
import runtrue.rules.concede.Concessions;
import runtrue.rules.explain.Explanation;
import runtrue.rules.explain.FindingExplanation;
import runtrue.rules.judge.DropFacts;
import runtrue.rules.judge.Judge;
import runtrue.rules.judge.subject.Grounds;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.WindSetting;
import runtrue.shape.ElementShapes;
import runtrue.shape.Tolerances;

/**
 * The way from a drop's files to its results, one stage after another. The rule set is compiled beside the reading of
 * the first model: the expression library takes longer to start than a small model to read.
 */
final class ModelCheck implements DropCheck {
    private final NamedFiles named;
    private final Instant runStamp;
    private final ForkJoinPool pool;
    private final CompletableFuture<RuleSet> rules;

    /** For all drops: what it unpacks is unpacked once, and only when a drop needs it. */
    private final GeometryServer geometry;

    /** Kept so that it is not thrown away unfinished; should it fail, the real writing fails alike and says so. */
    @SuppressWarnings("unused")
    private final CompletableFuture<Void> warmUp;

    private ModelCheck(CheckOptions options, Instant runStamp) {
        this.named = new NamedFiles(options);
        this.runStamp = runStamp;
        this.pool = new ForkJoinPool(options.threads());
        this.geometry = options.geometryProgram().map(GeometryServer::named).orElseGet(GeometryServer::bundled);
        this.rules = CompletableFuture.supplyAsync(named::ruleSet);
        // The spreadsheet library takes as long to start as a fair model to read; by the time it is needed it is ready.
        warmUp = rules.thenRunAsync(ModelCheck::warmUp);
    }

    /** A check whose results carry the given time of the run. */
    static DropCheck with(CheckOptions options, Instant runStamp) {
        return new ModelCheck(options, runStamp);
    }

    @Override
    public CheckedDrop check(Drop drop, Progress progress) {
        return opened(drop, progress, (open, chosen, judge) -> check(open, drop, chosen, judge, progress));
    }

    @Override
    public Optional<Explanation> explain(Drop drop, String finding) {
        return opened(drop, Progress.NONE, (open, chosen, judge) -> explain(open, drop, chosen, judge, finding));
    }

    /** What is done with the models of a drop while they are open. */
    @FunctionalInterface
    private interface Work<T> {
        T on(OpenDrop open, Choices chosen, CompletableFuture<Judge> judge);
    }

    private <T> T opened(Drop drop, Progress progress, Work<T> work) {
        CompletableFuture<Choices> choices = CompletableFuture.supplyAsync(() -> choices(drop));
        CompletableFuture<Judge> judge =
                rules.thenCombineAsync(choices, (r, c) -> Judge.of(c.rules().orElse(r), c.system()));
        progress.stage(Stage.INDEXING, drop.files().size());
        try (OpenDrop open = OpenDrop.open(drop, progress)) {
            Choices chosen = loaded(choices);
            if (open.models().isEmpty()) {
                throw CheckException.ofDrop(
                        String.join(System.lineSeparator(), open.failures()), new IllegalStateException());
            }
            return onPool(() -> work.on(open, chosen, judge));
        }
    }

    /** Settings and roof system of one drop; read beside the first indexing, since neither needs the other. */
    private record Choices(
            DropSettings settings,
            Optional<RuleSet> rules,
            WindSetting wind,
            RoofSystem system,
            BuildUp buildUp,
            Optional<RateList> rates,
            List<Concession> concessions) {}

    private Choices choices(Drop drop) {
        try {
            DropSettings settings = named.settings(drop);
            RoofSystem system = named.system(settings);
            return new Choices(
                    settings,
                    named.ruleSet(settings),
                    WindSetting.of(settings),
                    system,
                    named.buildUp(settings, system),
                    rates(drop),
                    concessions(drop));
        } catch (RuleException e) {
            // What the drop's own file says wrong concerns that drop alone.
            CheckOptions given = named.options();
            boolean own = drop.settingsFile().isPresent()
                    && given.settings().isEmpty()
                    && given.system().isEmpty()
                    && given.overrides().isEmpty();
            throw own ? CheckException.ofDrop(String.valueOf(e.getMessage()), e) : e;
        }
    }

    /** What is wrong with a rate file beside the models concerns the one drop. */
    private Optional<RateList> rates(Drop drop) {
        try {
            return named.rates(drop);
        } catch (RateException e) {
            throw named.options().rates().isPresent()
                    ? CheckException.ofOptions(String.valueOf(e.getMessage()), e)
                    : CheckException.ofDrop(String.valueOf(e.getMessage()), e);
        }
    }

    /** What is wrong with them concerns the one drop, whatever the options name. */
    private static List<Concession> concessions(Drop drop) {
        try {
            return drop.concessionsFile().map(Concessions::load).orElse(List.of());
        } catch (RuleException e) {
            throw CheckException.ofDrop(String.valueOf(e.getMessage()), e);
        }
    }

    /** A drop as the rules see it. */
    private record Laid(
            DropElements elements,
            Roof roof,
            Trust trust,
            List<GridAxis> axes,
            DropFacts facts,
            List<Comparison> engines) {}

    private Laid layOut(OpenDrop open, Drop drop, Choices chosen, Progress progress) {
        progress.stage(Stage.READING_SHAPES, 0);
        Tolerances tolerances = Tolerances.standard();
        List<Comparison> engines = new ArrayList<>();
        DropElements elements = DropElements.read(
                open.models(), Selections.of(chosen.settings().selectors()), tolerances, shapes(engines));
        progress.stage(Stage.LAYING_OUT, 0);
        Roof roof = Roofs.layOut(
                elements.roofs(),
                elements.members(),
                elements.surround(),
                RoofChoices.of(chosen.settings(), chosen.system(), elements.origin(), open.trueNorth(), tolerances));
        Trust trust = new Trust(
                elements.members(),
                StatedValues.of(open.models(), elements, roof, StatedTolerances.standard()),
                ModelHealth.of(open.models(), elements, roof));
        progress.stage(Stage.JUDGING, 0);
        List<GridAxis> axes = open.gridAxes();
        DropFacts facts = facts(drop, elements, open, axes, trust.stated());
        return new Laid(elements, roof, trust, axes, facts, engines);
    }

    private Optional<Explanation> explain(
            OpenDrop open, Drop drop, Choices chosen, CompletableFuture<Judge> judge, String finding) {
        Laid laid = layOut(open, drop, chosen, Progress.NONE);
        List<BodyZones> zones = loaded(judge).zones(chosen.settings(), chosen.wind(), laid.roof(), laid.facts());
        List<Grounds> grounds = loaded(judge).grounds(chosen.settings(), laid.roof(), laid.facts(), zones);
        List<Judgement> judged = concede(
                        grounds.stream().map(Grounds::judgement).toList(), chosen)
                .judgements();
        for (int i = 0; i < grounds.size(); i++) {
            if (judged.get(i).id().equals(finding)) {
                RuleSet ruleSet = chosen.rules().orElseGet(() -> loaded(rules));
                return Optional.of(FindingExplanation.of(
                        ruleSet, chosen.system(), grounds.get(i).judged(judged.get(i))));
            }
        }
        return Optional.empty();
    }

    private Concessions.Applied concede(List<Judgement> judged, Choices chosen) {
        return Concessions.apply(judged, chosen.concessions(), LocalDate.ofInstant(runStamp, UTC));
    }

    private CheckedDrop check(
            OpenDrop open, Drop drop, Choices chosen, CompletableFuture<Judge> judge, Progress progress) {
        Laid laid = layOut(open, drop, chosen, progress);
        Roof roof = laid.roof();
        List<BodyZones> zones = loaded(judge).zones(chosen.settings(), chosen.wind(), roof, laid.facts());
        Concessions.Applied conceded =
                concede(loaded(judge).judge(chosen.settings(), roof, laid.facts(), zones), chosen);
        Bill bill = Bills.of(roof, placed(zones), chosen.system(), chosen.settings(), chosen.buildUp());
        CheckResult result = ResultBuilder.build(new CheckInput(
                Version.number(),
                runStamp.toString(),
                drop.name(),
                open.fileInfos(laid.elements()),
                ResultParts.ruleSet(chosen.rules().orElseGet(() -> loaded(rules))),
                chosen.system(),
                ResultParts.settings(chosen.settings()),
                roof,
                zones,
                conceded.judgements(),
                conceded.uses(),
                new BillInput(
                        bill,
                        chosen.buildUp(),
                        chosen.rates(),
                        ModelledCounts.of(open.models(), roof, bill, chosen.buildUp())),
                ResultParts.unread(laid.elements()),
                laid.trust(),
                laid.axes()));
        Optional<EarlierResult> earlier = named.options().since().map(since -> EarlierResult.of(since, drop.name()));
        CheckResult compared =
                earlier.flatMap(EarlierResult::result).map(result::since).orElse(result);
        return checked(compared, open, roof, notes(compared, open, laid.engines(), earlier));
    }

    private static List<Zone> placed(List<BodyZones> bodies) {
        return bodies.stream()
                .flatMap(body -> body.zones().stream())
                .map(PlaneZone::zone)
                .toList();
    }

    private ElementShapes shapes(List<Comparison> compared) {
        return SecondEngine.of(
                ElementShapes.builtIn(),
                named.options().geometry(),
                geometry,
                Comparison.Tolerance.standard(),
                compared::add);
    }

    private CheckedDrop checked(CheckResult result, OpenDrop open, Roof roof, List<String> notes) {
        int unaccounted =
                (int) roof.unplaced().stream().filter(u -> !u.counted()).count();
        return new CheckedDrop(
                result.planes().size(),
                result.planes().stream().mapToDouble(p -> p.areaSquareMetres()).sum(),
                ResultParts.counts(result),
                result.unread().size() + open.failures().size() + unaccounted,
                notes,
                files(result));
    }

    private List<OutputFile> files(CheckResult result) {
        List<RoofPlan> plans = RoofPlans.of(result);
        List<OutputFile> files = new ArrayList<>(List.of(
                new OutputFile("quantities.xlsx", out -> Workbooks.quantities(result, out)),
                new OutputFile("non-conformances.xlsx", out -> Workbooks.nonConformances(result, out)),
                new OutputFile("non-conformances.pdf", out -> FindingsPdf.write(result, out)),
                new OutputFile(
                        "issues.bcf",
                        out -> IssueFile.write(
                                result,
                                named.options().issues(),
                                named.options().issuesBy(),
                                out)),
                new OutputFile("set-out.dxf", out -> SetOutDrawing.write(result, out)),
                new OutputFile("findings.csv", out -> CsvTables.findings(result, out)),
                new OutputFile("quantities.csv", out -> CsvTables.quantities(result, out)),
                new OutputFile("test-cases.xml", out -> TestCases.write(result, out)),
                new OutputFile("report.html", out -> ReportPage.write(result, plans, out)),
                new OutputFile("result.json", out -> ResultJson.write(result, out))));
        for (RoofPlan plan : plans) {
            files.add(new OutputFile(plan.name() + ".svg", plan::write));
        }
        return files;
    }

    /** Files that could not be read, what is different, concessions whose findings are back, engines compared. */
    private static List<String> notes(
            CheckResult result, OpenDrop open, List<Comparison> engines, Optional<EarlierResult> earlier) {
        List<String> notes = new ArrayList<>(open.failures());
        earlier.map(EarlierResult::note).filter(note -> !note.isEmpty()).ifPresent(notes::add);
        result.changes().map(ResultParts::changes).ifPresent(notes::add);
        result.concessions().stream()
                .filter(c -> !c.state().equals("holds"))
                .forEach(c -> notes.add(c.from() + ": concession " + c.state() + ". " + c.remark()));
        notes.addAll(ResultParts.comparison(engines));
        return notes;
    }

    private static DropFacts facts(
            Drop drop, DropElements elements, OpenDrop open, List<GridAxis> axes, List<StatedValue> stated) {
        List<DropFacts.Unread> roofs = new ArrayList<>();
        List<DropFacts.Unread> supports = new ArrayList<>();
        elements.unread()
                .forEach(u -> (u.roof() ? roofs : supports)
                        .add(new DropFacts.Unread(u.element(), u.why().reason())));
        return new DropFacts(
                drop.name(),
                open.models().size(),
                roofs,
                supports,
                elements.surround().unlocated(Surround.Role.SUPPORT),
                elements.surround().unlocated(Surround.Role.THING),
                open.trueNorth().isPresent(),
                !axes.isEmpty(),
                stated);
    }

    private static void warmUp() {
        try {
            Workbooks.warmUp();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Waits for something that was loaded beside the reading; what is wrong with it concerns every drop. */
    private static <T> T loaded(CompletableFuture<T> loading) {
        try {
            return loading.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while rules and settings were loaded", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CheckException told) {
                throw told;
            }
            if (e.getCause() instanceof RuleException wrong) {
                throw CheckException.ofOptions(String.valueOf(wrong.getMessage()), wrong);
            }
            throw new IllegalStateException("rules or settings could not be loaded", e.getCause());
        }
    }

    /** Parallel streams run on the pool of the task that starts them, which is how the number of threads is kept. */
    private <T> T onPool(Callable<T> work) {
        try {
            return pool.submit(work).get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException wrong) {
                throw wrong;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
