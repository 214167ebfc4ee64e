package runtrue.bill.modelled;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Things of one kind that are modelled on one plane, beside what was derived.
 *
 * @param plane id; empty for what lies on no roof plane, or at a place that is not known
 * @param kind in the model's words: predefined type, name of the type or the like
 * @param ifcClass of the occurrences
 * @param count of things
 * @param occurrences in the models; one may stand for several things
 * @param how one occurrence was counted
 * @param items ids of the bill's items that were compared, those that share most words with the kind; may be empty
 * @param derived what the bill counts of these on the plane; empty where nothing is compared
 * @param remark why nothing is compared; else empty
 * @param globalIds of the occurrences
 */
public record ModelledCount(
        String plane,
        String kind,
        String ifcClass,
        long count,
        long occurrences,
        String how,
        List<String> items,
        OptionalDouble derived,
        String remark,
        List<String> globalIds) {
    public ModelledCount {
        items = List.copyOf(items);
        globalIds = List.copyOf(globalIds);
    }
}
