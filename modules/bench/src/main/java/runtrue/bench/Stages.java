package runtrue.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.bill.Bill;
import runtrue.bill.Bills;
import runtrue.cli.ResultParts;
import runtrue.cli.RoofChoices;
import runtrue.cli.Selections;
import runtrue.drop.ArchiveLimits;
import runtrue.drop.Drop;
import runtrue.drop.Drops;
import runtrue.drop.ModelFile;
import runtrue.drop.ModelSource;
import runtrue.drop.OpenedModels;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.ElementFinder;
import runtrue.ifc.select.FoundElement;
import runtrue.ifc.select.FoundElements;
import runtrue.report.Workbooks;
import runtrue.result.CheckResult;
import runtrue.result.build.BillInput;
import runtrue.result.build.CheckInput;
import runtrue.result.build.ResultBuilder;
import runtrue.result.build.Trust;
import runtrue.result.json.ResultJson;
import runtrue.roof.Roof;
import runtrue.roof.Roofs;
import runtrue.roof.Zone;
import runtrue.roof.read.DropElements;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUps;
import runtrue.rules.judge.DropFacts;
import runtrue.rules.judge.Judge;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.WindSetting;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** The stages of a check of one drop, each on what the one before it left. Rule set, systems and defaults are the bundled ones. */
final class Stages {
    private final Drop drop;
    private final DropSettings settings;
    private final RoofSystem system;
    private final BuildUp buildUp;
    private final Tolerances tolerances = Tolerances.standard();

    private Stages(Drop drop, DropSettings settings, RoofSystem system) {
        this.drop = drop;
        this.settings = settings;
        this.system = system;
        this.buildUp = BuildUps.bundled("single-skin");
    }

    /** What was found in all files of a drop. */
    record Found(List<FoundElement> roofs, List<FoundElement> supports) {}

    /** A judge and the rules it judges by. */
    record Rules(RuleSet rules, Judge judge) {}

    /** A judged roof, with the zones it was judged by. */
    record Judged(RuleSet rules, List<Judgement> judgements, List<BodyZones> zones) {}

    /** The first drop in a folder, or the drop of one file. */
    static Stages of(Path path) {
        Drop drop = Drops.find(List.of(path), note -> {}).get(0);
        DropSettings settings = SettingsFiles.load(Optional.empty(), drop.settingsFile(), Map.of());
        return new Stages(drop, settings, RoofSystems.bundled(settings.system()));
    }

    /** To be closed by the caller. An archive is unpacked. */
    List<StepFile> index() {
        List<StepFile> files = new ArrayList<>();
        for (ModelFile file : drop.files()) {
            try (OpenedModels opened = file.open(ArchiveLimits.DEFAULT)) {
                for (ModelSource source : opened.models()) {
                    files.add(
                            source instanceof ModelSource.InMemory memory
                                    ? StepFile.of(memory.name(), memory.content())
                                    : StepFile.open(((ModelSource.OnDisk) source).path()));
                }
            }
        }
        return files;
    }

    List<IfcModel> models(List<StepFile> files) {
        return files.stream().map(IfcModel::of).toList();
    }

    Found find(List<IfcModel> models) {
        List<FoundElement> roofs = new ArrayList<>();
        List<FoundElement> supports = new ArrayList<>();
        for (IfcModel model : models) {
            FoundElements found = ElementFinder.find(model, Selections.of(settings.selectors()));
            roofs.addAll(found.roofs());
            supports.addAll(found.supports());
        }
        return new Found(roofs, supports);
    }

    List<Shape> shapes(Found found) {
        ShapeReader reader = ShapeReader.of(tolerances, Vector3D.ZERO);
        List<FoundElement> all = new ArrayList<>(found.roofs());
        all.addAll(found.supports());
        return all.parallelStream().map(f -> reader.read(f.entity())).toList();
    }

    DropElements elements(List<IfcModel> models) {
        return DropElements.read(models, Selections.of(settings.selectors()), tolerances);
    }

    Roof layOut(DropElements elements) {
        return Roofs.layOut(
                elements.roofs(),
                elements.members(),
                elements.surround(),
                RoofChoices.of(settings, system, elements.origin(), OptionalDouble.empty(), tolerances));
    }

    Bill bill(Roof roof, List<BodyZones> bodies) {
        List<Zone> zones = bodies.stream()
                .flatMap(b -> b.zones().stream())
                .map(PlaneZone::zone)
                .toList();
        return Bills.of(roof, zones, system, settings, buildUp);
    }

    Rules rules() {
        RuleSet rules = RuleSets.bundled("long-run-sheets");
        return new Rules(rules, Judge.of(rules, system));
    }

    Judged judge(Roof roof, Rules rules) {
        DropFacts facts = new DropFacts(drop.name(), drop.files().size(), List.of(), List.of(), false, false);
        List<BodyZones> zones = rules.judge().zones(settings, WindSetting.of(settings), roof, facts);
        List<Judgement> judgements = rules.judge().judge(settings, roof, facts, zones);
        return new Judged(rules.rules(), judgements, zones);
    }

    CheckResult result(DropElements elements, Roof roof, Bill bill, Judged judged) {
        return ResultBuilder.build(new CheckInput(
                "benchmark",
                "2026-01-01T00:00:00Z",
                drop.name(),
                List.of(),
                ResultParts.ruleSet(judged.rules()),
                system,
                ResultParts.settings(settings),
                roof,
                judged.zones(),
                judged.judgements(),
                List.of(),
                new BillInput(bill, buildUp, Optional.empty(), List.of()),
                ResultParts.unread(elements),
                new Trust(elements.members(), List.of(), List.of()),
                List.of()));
    }

    /** Both workbooks and the JSON, to nowhere. */
    static void write(CheckResult result) throws IOException {
        Workbooks.quantities(result, OutputStream.nullOutputStream());
        Workbooks.nonConformances(result, OutputStream.nullOutputStream());
        ResultJson.write(result, OutputStream.nullOutputStream());
    }
}
