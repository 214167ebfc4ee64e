package runtrue.samples.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class GlobalIdsTest {
    /** The digits in the order that buildingSMART's description of IfcGloballyUniqueId gives (from memory). */
    private static final String DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    @Property
    void an_id_read_as_a_number_of_base_64_is_the_uuid_of_the_name(@ForAll String name) {
        BigInteger number = GlobalIds.of(name)
                .chars()
                .mapToObj(digit -> BigInteger.valueOf(DIGITS.indexOf(digit)))
                .reduce(BigInteger.ZERO, (sum, digit) -> sum.shiftLeft(6).add(digit));
        UUID uuid = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        assertThat(number).isEqualTo(new BigInteger(uuid.toString().replace("-", ""), 16));
    }

    @Property
    void an_id_has_22_digits_and_starts_below_4(@ForAll String name) {
        assertThat(GlobalIds.of(name)).matches("[0-3][0-9A-Za-z_$]{21}");
    }
}
