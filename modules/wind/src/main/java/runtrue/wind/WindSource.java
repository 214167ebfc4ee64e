package runtrue.wind;

/**
 * Where a coefficient or rule comes from.
 *
 * @param document standard with its edition
 * @param place table, figure or clause
 * @param note what else has to be known of it; may be empty
 */
public record WindSource(String document, String place, Certainty certainty, String note) {
    public String sentence() {
        return document + ", " + place + " (" + certainty.words() + (note.isEmpty() ? "" : "; " + note) + ").";
    }
}
