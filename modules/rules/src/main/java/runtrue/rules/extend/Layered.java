package runtrue.rules.extend;

import java.util.List;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * A rule set put together from the files of its chain.
 *
 * @param top as if it stood in one file; each key and value has the place that it really stands at
 * @param chain the files, first the one that extends none
 */
public record Layered(Mapping top, List<Layer> chain, List<SwitchedOff> switchedOff) {
    private static final int MOST_NAMED = 3;

    public Layered {
        chain = List.copyOf(chain);
        switchedOff = List.copyOf(switchedOff);
    }

    /** The rule set that was asked for; what the settings of a drop change of it goes by its name. */
    public Layer last() {
        Layer last = chain.get(chain.size() - 1);
        return last.ofSettings() ? chain.get(chain.size() - 2) : last;
    }

    /** SHA-256 of the file's text; of a chain, of the hashes of all its files, so that no change of any goes unseen. */
    public String hash() {
        if (chain.size() == 1) {
            return chain.get(0).file().yaml().hash();
        }
        List<String> hashes = chain.stream().map(l -> l.file().yaml().hash()).toList();
        return new YamlFile("", String.join("\n", hashes)).hash();
    }

    /** Its own version, those that it rests on, and what was switched off. */
    public String version() {
        StringBuilder text = new StringBuilder(last().version());
        for (int i = chain.indexOf(last()) - 1; i >= 0; i--) {
            text.append(" on ")
                    .append(chain.get(i).name())
                    .append(' ')
                    .append(chain.get(i).version());
        }
        if (chain.get(chain.size() - 1).ofSettings()) {
            text.append(", changed by the drop's settings");
        }
        if (switchedOff.size() > MOST_NAMED) {
            text.append(", without ").append(switchedOff.size()).append(" of its rules");
        } else if (!switchedOff.isEmpty()) {
            List<String> ids = switchedOff.stream().map(SwitchedOff::rule).toList();
            text.append(", without ").append(String.join(", ", ids));
        }
        return text.toString();
    }
}
