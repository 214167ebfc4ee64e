package runtrue.roof.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runtrue.roof.RoofTolerance;
import runtrue.roof.SupportEvidence;

/**
 * Chooses among the members below a plane those that the sheets rest on: the highest level at which a fair share of
 * them have their top. Lower members (eave beams, rafters below purlins) carry purlins, not sheets.
 */
final class ContactLevel {
    /** A support this far from the others' tops still carries once packed or pressed down; farther off it touches nothing. */
    static final double TOLERANCE = RoofTolerance.CONTACT.si();

    /** A level with less of the members' length than this is an exception: a plate, a trimmer. */
    private static final double FAIR_SHARE = RoofTolerance.CONTACT_SHARE.si();

    private ContactLevel() {}

    /** Candidates at the contact level; typed and named purlins decide the level where there are any. */
    static List<Candidate> carrying(List<Candidate> candidates) {
        List<Candidate> known = candidates.stream()
                .filter(c -> c.evidence() != SupportEvidence.POSITION)
                .toList();
        List<Candidate> deciding = known.isEmpty() ? candidates : known;
        if (deciding.isEmpty()) {
            return List.of();
        }
        double level = level(deciding);
        return candidates.stream()
                .filter(c -> Math.abs(c.contact() - level) <= TOLERANCE)
                .toList();
    }

    /** Length-weighted median of the first level, from the top, that holds a fair share; w, metres. */
    static double level(List<Candidate> candidates) {
        List<Candidate> byHeight = new ArrayList<>(candidates);
        byHeight.sort(Comparator.comparingDouble(Candidate::contact).reversed());
        double total = length(byHeight);
        List<Candidate> fullest = List.of();
        List<Candidate> level = new ArrayList<>();
        for (int i = 0; i < byHeight.size(); i++) {
            level.add(byHeight.get(i));
            boolean last = i + 1 == byHeight.size()
                    || byHeight.get(i).contact() - byHeight.get(i + 1).contact() > TOLERANCE;
            if (last) {
                if (length(level) >= FAIR_SHARE * total) {
                    return median(level);
                }
                fullest = length(level) > length(fullest) ? List.copyOf(level) : fullest;
                level.clear();
            }
        }
        return median(fullest);
    }

    private static double median(List<Candidate> level) {
        double half = length(level) / 2;
        double sum = 0;
        for (Candidate c : level) {
            sum += c.inside();
            if (sum >= half) {
                return c.contact();
            }
        }
        throw new IllegalArgumentException("a level holds at least one member");
    }

    private static double length(List<Candidate> candidates) {
        return candidates.stream().mapToDouble(Candidate::inside).sum();
    }
}
