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

    /** The last file of the chain, which was asked for. */
    public Layer last() {
        return chain.get(chain.size() - 1);
    }

    /** SHA-256 of the file's text; of a chain, of the hashes of all its files, so that no change of any goes unseen. */
    public String hash() {
        if (chain.size() == 1) {
            return last().file().yaml().hash();
        }
        List<String> hashes = chain.stream().map(l -> l.file().yaml().hash()).toList();
        return new YamlFile("", String.join("\n", hashes)).hash();
    }

    /** Its own version, those that it rests on, and what was switched off. */
    public String version() {
        StringBuilder text = new StringBuilder(last().version());
        for (int i = chain.size() - 2; i >= 0; i--) {
            text.append(" on ")
                    .append(chain.get(i).name())
                    .append(' ')
                    .append(chain.get(i).version());
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
