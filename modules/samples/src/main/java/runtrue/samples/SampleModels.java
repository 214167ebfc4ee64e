package runtrue.samples;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** All sample files. */
public final class SampleModels {
    private SampleModels() {}

    /** Text of each file by its path below sample-models/, folders parted by slashes. The same on every call. */
    public static Map<String, String> all() {
        Map<String, String> files = new TreeMap<>();
        files.put("kiln-hall/kiln-hall-architecture.ifc", KilnHallArchitecture.write());
        files.put("kiln-hall/kiln-hall-structure.ifc", KilnHallStructure.write());
        files.put("lock-office/lock-office.ifc", LockOffice.write());
        files.put("cart-shed/cart-shed.ifc", CartShed.write());
        files.put("rope-walk/rope-walk.ifc", RopeWalk.write());
        files.put("tally-sheds/tally-sheds.ifc", TallySheds.write());
        files.put("dye-works/dye-works.ifc", DyeWorks.write());
        return Collections.unmodifiableMap(files);
    }
}
