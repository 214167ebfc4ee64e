package runtrue.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import runtrue.cli.rules.RulesRequest;
import runtrue.cli.rules.RulesWork;
import runtrue.drop.Drop;
import runtrue.drop.DropException;
import runtrue.drop.Drops;
import runtrue.geometryserver.EngineUse;
import runtrue.ids.IdsDocument;
import runtrue.report.bcf.BcfVersion;
import runtrue.report.bcf.IssueGrouping;
import runtrue.rules.DropSettings;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.SettingsFiles;
import runtrue.rules.explain.Explanation;
import runtrue.rules.needs.ModelNeeds;

/** Rules by the same files and options that a check would take. */
final class RulesOfFiles implements RulesWork {
    private final DropCheck.Factory factory;

    RulesOfFiles(DropCheck.Factory factory) {
        this.factory = factory;
    }

    @Override
    public Opened open(RulesRequest request) {
        NamedFiles named = new NamedFiles(options(request));
        Optional<Path> beside = request.paths().stream()
                .map(path -> path.resolve(SettingsFiles.NAME))
                .filter(Files::isRegularFile)
                .findFirst();
        DropSettings settings = named.settings(beside);
        return new Opened(named.ruleBook(settings), named.system(settings), settings);
    }

    @Override
    public IdsDocument needs(RuleSet rules) {
        Path file = home().resolve("rules/needs/model-information.yaml");
        return ModelNeeds.of(rules, Optional.of(file).filter(Files::isRegularFile));
    }

    @Override
    public Optional<Explanation> finding(RulesRequest request, String id) {
        try {
            DropCheck check = factory.with(options(request));
            for (Drop drop : Drops.find(request.paths(), passedOver -> {})) {
                Optional<Explanation> found = check.explain(drop, id);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        } catch (DropException | CheckException e) {
            throw new RuleException(String.valueOf(e.getMessage()), e);
        }
    }

    private static CheckOptions options(RulesRequest request) {
        return new CheckOptions(
                request.rules(),
                request.system(),
                request.settings(),
                request.overrides(),
                Optional.empty(),
                Optional.empty(),
                home(),
                Runtime.getRuntime().availableProcessors(),
                EngineUse.FILL_IN,
                Optional.empty(),
                BcfVersion.V2_1,
                IssueGrouping.FINDING);
    }

    private static Path home() {
        return Path.of(System.getProperty("runtrue.home", ""));
    }
}
