package runtrue.cli.rules;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import runtrue.ids.IdsDocument;
import runtrue.ids.IdsFile;
import runtrue.rules.Rule;
import runtrue.rules.RuleException;
import runtrue.rules.explain.RuleExplanation;
import runtrue.rules.explain.RuleList;
import runtrue.rules.yaml.NearMiss;

/** {@code runtrue rules}: lists the rules in force, tries their examples, explains one of them or one finding. */
public final class RulesCommand implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int USAGE = 2;
    static final int EXAMPLE_FAILS = 3;
    static final int EXAMPLE_LACKING = 4;

    private final RulesWork work;
    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    private final RulesSyntax given = new RulesSyntax();

    public RulesCommand(RulesWork work) {
        this.work = work;
    }

    public CommandSpec spec() {
        return given.addTo(spec);
    }

    @Override
    public Integer call() {
        long asked = Stream.of(
                        given.test(), given.rule().isPresent(), given.finding().isPresent())
                .filter(Boolean::booleanValue)
                .count();
        if (asked > 1) {
            throw usage("--test, --rule, --finding and --ids are asked for one at a time.");
        }
        try {
            return given.finding().isPresent() ? finding(given.finding().get()) : book();
        } catch (RuleException e) {
            return told(String.valueOf(e.getMessage()), USAGE);
        } catch (IOException e) {
            return told(given.ids().map(Path::toString).orElse("") + ": cannot be written (" + e + ")", FAILED);
        }
    }

    private int told(String message, int exitCode) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(message);
        err.flush();
        return exitCode;
    }

    private int book() throws IOException {
        RulesWork.Opened opened = work.open(given.request());
        if (given.test()) {
            ExampleReport report = ExampleReport.of(opened.book());
            print(report.lines());
            return report.exitCode();
        }
        if (given.ids().isPresent()) {
            IdsDocument needs = work.needs(opened.book().rules());
            try (OutputStream out = Files.newOutputStream(given.ids().get())) {
                IdsFile.write(needs, out);
            }
            print(List.of("Written: " + given.ids().get() + ", "
                    + needs.specifications().size() + " specifications"));
        } else if (given.rule().isPresent()) {
            Rule rule = rule(opened, given.rule().get());
            print(RuleExplanation.of(opened.book(), rule, opened.system(), opened.settings())
                    .lines());
        } else {
            print(RuleList.of(opened.book().rules(), opened.system(), opened.settings()));
        }
        return DONE;
    }

    private static Rule rule(RulesWork.Opened opened, String id) {
        TreeSet<String> ids = new TreeSet<>();
        opened.book().rules().rules().forEach(rule -> ids.add(rule.id()));
        return opened.book()
                .rules()
                .rule(id)
                .orElseThrow(() -> new RuleException("There is no rule \"" + id + "\"" + NearMiss.hint(id, ids)
                        + " There are " + String.join(", ", ids) + "."));
    }

    private int finding(String id) {
        if (given.request().paths().isEmpty()) {
            throw usage("--finding needs PATH: the folder or the files of the drop.");
        }
        print(work.finding(given.request(), id)
                .orElseThrow(() -> new RuleException("No drop given here has a finding \"" + id
                        + "\". Ids stand in sheet Non-conformances; give the options that the drop was checked with."))
                .lines());
        return DONE;
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private void print(List<String> lines) {
        PrintWriter out = spec.commandLine().getOut();
        lines.forEach(out::println);
        out.flush();
    }
}
