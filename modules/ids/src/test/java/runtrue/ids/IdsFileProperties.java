package runtrue.ids;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import runtrue.ids.Requirement.Attribute;
import runtrue.ids.Requirement.Cardinality;
import runtrue.ids.Requirement.Facet;
import runtrue.ids.Requirement.Material;

/** Whatever is asked for, in whatever order, the file has the structure of the published schema. */
class IdsFileProperties {
    @Provide
    Arbitrary<Specification> specifications() {
        Arbitrary<Facet> facets = Arbitraries.of(
                new Attribute("Name"),
                new Attribute("Tag"),
                new Requirement.Property("Pset_A", "B", "IfcLabel"),
                new Requirement.Property("Qto_A", "C", ""),
                new Material());
        Arbitrary<Requirement> requirements = Combinators.combine(
                        facets,
                        Arbitraries.of(Cardinality.class),
                        Arbitraries.strings().ofMaxLength(8))
                .as(Requirement::new);
        return Combinators.combine(
                        Arbitraries.of("IFC2X3", "IFC4", "IFC4X3_ADD2")
                                .list()
                                .uniqueElements()
                                .ofMinSize(1),
                        Arbitraries.of("IfcSlab", "IfcRoof", "IFCBEAM")
                                .list()
                                .uniqueElements()
                                .ofMinSize(1),
                        Arbitraries.of("ROOF", "ROOFING").list().uniqueElements(),
                        Arbitraries.of(true, false),
                        requirements.list().ofMaxSize(6),
                        Arbitraries.strings().ofMaxLength(8))
                .as((versions, entities, types, needed, wanted, text) ->
                        new Specification("name", versions, text, text, entities, types, needed, wanted));
    }

    @Property(tries = 200)
    void the_structure_is_that_of_the_schema(@ForAll("specifications") Specification specification) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        IdsFile.write(
                new IdsDocument("title", "1", "", Optional.empty(), "", List.of(specification, specification)), out);
        assertThat(IdsStructure.faults(out.toString(StandardCharsets.UTF_8))).isEmpty();
    }
}
