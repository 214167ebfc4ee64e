package runtrue.result.build;

import java.util.List;
import runtrue.ifc.GridAxis;
import runtrue.result.FileInfo;
import runtrue.result.RuleSetInfo;
import runtrue.result.Setting;
import runtrue.result.UnreadElement;
import runtrue.roof.Roof;
import runtrue.rules.Judgement;
import runtrue.rules.RoofSystem;
import runtrue.rules.concede.ConcessionUse;
import runtrue.rules.wind.BodyZones;

/**
 * What one check hands on to its result.
 *
 * @param runStamp time of the run as ISO 8601 with zone, taken by the caller
 * @param zones of all roof bodies
 * @param concessions as applied to the judgements
 * @param trust how far the rest may be trusted
 * @param axes grid axes of all files, world metres
 */
public record CheckInput(
        String toolVersion,
        String runStamp,
        String drop,
        List<FileInfo> files,
        RuleSetInfo ruleSet,
        RoofSystem system,
        List<Setting> settings,
        Roof roof,
        List<BodyZones> zones,
        List<Judgement> judgements,
        List<ConcessionUse> concessions,
        BillInput bill,
        List<UnreadElement> unread,
        Trust trust,
        List<GridAxis> axes) {
    public CheckInput {
        files = List.copyOf(files);
        settings = List.copyOf(settings);
        zones = List.copyOf(zones);
        judgements = List.copyOf(judgements);
        concessions = List.copyOf(concessions);
        unread = List.copyOf(unread);
        axes = List.copyOf(axes);
    }
}
