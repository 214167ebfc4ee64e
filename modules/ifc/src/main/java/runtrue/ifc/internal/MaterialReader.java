package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.MaterialLayer;

/** Materials of an element, its own or else those of its type. Thickness in metres. */
final class MaterialReader {
    private final StepModel model;

    MaterialReader(StepModel model) {
        this.model = model;
    }

    List<MaterialLayer> of(IfcEntity element, @Nullable IfcEntity type) {
        List<MaterialLayer> own = assigned(element);
        return own.isEmpty() && type != null ? assigned(type) : own;
    }

    private List<MaterialLayer> assigned(IfcEntity object) {
        List<MaterialLayer> layers = new ArrayList<>();
        for (int material : model.relations().ones(Relation.MATERIALS, object.id())) {
            try {
                read(model.entity(material), layers);
            } catch (IfcException e) {
                model.note("Material of " + object.label() + " is not read: " + e.getMessage());
            }
        }
        return layers;
    }

    /** Classes that stand for others are followed; the names of their attributes tell them apart. */
    private void read(IfcEntity material, List<MaterialLayer> layers) {
        switch (material.type()) {
            case "IfcMaterial" -> layers.add(plain(material));
            case "IfcMaterialLayer", "IfcMaterialLayerWithOffsets" -> layers.add(layer(material));
            case "IfcMaterialLayerSetUsage" -> read(material.ref("ForLayerSet"), layers);
            case "IfcMaterialLayerSet" -> readAll(material, "MaterialLayers", layers);
            case "IfcMaterialProfileSetUsage", "IfcMaterialProfileSetUsageTapering" ->
                read(material.ref("ForProfileSet"), layers);
            case "IfcMaterialProfileSet" -> readAll(material, "MaterialProfiles", layers);
            case "IfcMaterialConstituentSet" -> readAll(material, "MaterialConstituents", layers);
            case "IfcMaterialList" -> readAll(material, "Materials", layers);
            case "IfcMaterialProfile", "IfcMaterialProfileWithOffsets", "IfcMaterialConstituent" ->
                material.optionalRef("Material").ifPresent(base -> layers.add(plain(base)));
            default -> model.note("Material " + material.label() + " is of a class that is not read.");
        }
    }

    private void readAll(IfcEntity set, String attribute, List<MaterialLayer> layers) {
        set.refs(attribute).forEach(item -> read(item, layers));
    }

    private static MaterialLayer plain(IfcEntity material) {
        return new MaterialLayer(material.text("Name"), OptionalDouble.empty());
    }

    private MaterialLayer layer(IfcEntity layer) {
        String name =
                layer.optionalRef("Material").map(base -> base.text("Name")).orElse("");
        OptionalDouble thickness = layer.optionalReal("LayerThickness");
        return new MaterialLayer(
                name.isEmpty() ? layer.text("Name") : name,
                thickness.isEmpty()
                        ? thickness
                        : OptionalDouble.of(
                                thickness.getAsDouble() * model.units().length()));
    }
}
