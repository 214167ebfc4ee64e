package runtrue.ifc;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a model says of one building element, apart from its shape. Texts are empty where the model says nothing.
 *
 * @param file display name of the file, as {@link runtrue.step.StepFile#name()}
 * @param stepId instance number in that file
 * @param ifcClass for example {@code IfcSlab}
 * @param predefinedType own, or else that of the type object; upper case
 * @param parent GlobalId of the element that it is a part of by aggregation
 * @param parentClass class of that element
 * @param layers materials from the top of the layer set to its end as modelled; plain materials without thickness
 * @param classifications identification codes and names of classification references
 * @param properties by {@code Set.Property}, own ones before those of the type
 */
public record Element(
        String globalId,
        String file,
        int stepId,
        String ifcClass,
        String predefinedType,
        String objectType,
        String name,
        String tag,
        String typeName,
        String building,
        String storey,
        String parent,
        String parentClass,
        List<MaterialLayer> layers,
        List<String> classifications,
        Map<String, PropertyValue> properties) {
    public Element {
        layers = List.copyOf(layers);
        classifications = List.copyOf(classifications);
        // Keeps the order of the file; Map.copyOf would shuffle it from run to run.
        properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
    }
}
