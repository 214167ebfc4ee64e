package runtrue.report.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import runtrue.report.xml.LegalText;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;
import runtrue.result.Counts.Outcomes;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.RuleSetInfo;

/**
 * Judgements as test cases in the XML that build servers read: a suite for each rule, a case for each thing it judged.
 * What was not assessed is skipped and not passed; what was conceded is skipped too, with who conceded it. That form has no
 * standard; the names are those that all such servers know.
 */
public final class TestCases {
    private final CheckResult result;
    private final XMLStreamWriter xml;

    private TestCases(CheckResult result, XMLStreamWriter xml) {
        this.result = result;
        this.xml = xml;
    }

    /** Writes the file and leaves the stream open. */
    public static void write(CheckResult result, OutputStream out) throws IOException {
        try {
            XMLStreamWriter xml =
                    XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
            new TestCases(result, xml).suites();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IOException("The test cases could not be written: " + e.getMessage(), e);
        }
    }

    private void suites() throws XMLStreamException {
        Map<String, List<Finding>> findings = by(result.findings(), Finding::rule);
        Map<String, List<Conforming>> conforming = by(result.conforming(), Conforming::rule);
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.writeStartElement("testsuites");
        attribute("name", "Runtrue " + result.drop());
        counts(result.counts().total());
        for (RuleSetInfo.Rule rule : result.ruleSet().rules()) {
            suite(rule, findings.getOrDefault(rule.id(), List.of()), conforming.getOrDefault(rule.id(), List.of()));
        }
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private static <T> Map<String, List<T>> by(List<T> all, Function<T, String> rule) {
        return all.stream().collect(Collectors.groupingBy(rule, LinkedHashMap::new, Collectors.toList()));
    }

    private void suite(RuleSetInfo.Rule rule, List<Finding> findings, List<Conforming> conforming)
            throws XMLStreamException {
        xml.writeStartElement("testsuite");
        attribute("name", rule.id());
        counts(new Outcomes(
                conforming.size(),
                of(findings, Outcome.DOES_NOT_CONFORM),
                of(findings, Outcome.NOT_ASSESSED),
                of(findings, Outcome.CONCEDED)));
        attribute("timestamp", result.runStamp());
        for (Finding finding : findings) {
            caseOf(finding.rule(), finding.subject() + " [" + finding.id() + "]");
            verdict(finding);
            xml.writeEndElement();
        }
        for (Conforming one : conforming) {
            caseOf(one.rule(), one.subject() + " [" + one.id() + "]");
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static int of(List<Finding> findings, Outcome outcome) {
        return (int) findings.stream().filter(f -> f.outcome() == outcome).count();
    }

    private void counts(Outcomes outcomes) throws XMLStreamException {
        attribute("tests", Integer.toString(outcomes.all()));
        attribute("failures", Integer.toString(outcomes.doesNotConform()));
        attribute("errors", "0");
        attribute("skipped", Integer.toString(outcomes.notAssessed() + outcomes.conceded()));
    }

    private void caseOf(String rule, String name) throws XMLStreamException {
        xml.writeStartElement("testcase");
        attribute("classname", result.drop() + "." + rule);
        attribute("name", name);
    }

    private void verdict(Finding finding) throws XMLStreamException {
        if (finding.outcome() == Outcome.DOES_NOT_CONFORM) {
            xml.writeStartElement("failure");
            attribute("type", finding.severity().label());
            attribute("message", finding.message());
            xml.writeCharacters(LegalText.of(Stream.of(
                            finding.cure(),
                            finding.planeName(),
                            finding.gridPlace(),
                            finding.elements().stream()
                                    .map(e -> e.name() + " " + e.globalId())
                                    .collect(Collectors.joining("\n")))
                    .filter(t -> !t.isEmpty())
                    .collect(Collectors.joining("\n"))));
        } else {
            xml.writeStartElement("skipped");
            attribute("message", finding.outcome().label() + ": " + finding.reason());
        }
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, LegalText.of(value));
    }
}
