package runtrue.ifc.select;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as they occur in models, a line a language; common usage, no source. */
class NamesTest {
    @ParameterizedTest
    @CsvSource({
        "Roof slab;ROOF 1;Basic Roof:Generic - 400mm:355926;Floor:ConcreteRoof;RoofDeck;Roofing sheet",
        "Dach-1;Flachdach;Pultdachplatte;DACHPLATTE",
        "Toiture bac acier;Toit terrasse",
        "Techo 2;Cubierta inclinada;Tejado",
        "Cobertura metálica;Telhado",
        "Tetto di base;Copertura",
        "dakplaat;platdak;IFC_dakplaat_geisoleerd",
        "Tak;Yttertak;Takplåt",
        "Vesikatto;Katto",
        "Tagflade",
        "Střecha;Strecha 1;Połać dach",
        "Çatı paneli",
        "Крыша;Кровля",
        "屋面板;屋根"
    })
    void takesForARoof(String names) {
        assertThat(names.split(";", -1))
                .allSatisfy(name ->
                        assertThat(Names.ROOF.matcher(name).find()).as(name).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "Waterproofing;WATERPROOF MEMBRANE;Proof;Contact;Attack;Stakeholder;Floor slab;Ground slab",
        "Roof gutter;Roof drain DN100;Rooftop unit;Roof window;Roof truss;Roof fan",
        "Dachrinne;Dachboden;Decke Dachgeschoss;Dachfenster;Mitarbeiter",
        "Innertak;Undertak",
        "Panneau 1;Lucernario;Dakgoot"
    })
    void takesForNoRoof(String names) {
        assertThat(names.split(";", -1))
                .allSatisfy(name ->
                        assertThat(Names.ROOF.matcher(name).find()).as(name).isFalse());
    }

    @ParameterizedTest
    @CsvSource({
        "Purlin Z200 bay 1;PURLINS;SteelPurlin;Batten 40x60",
        "Pfette U160;Firstpfette;Mittelpfetten",
        "Panne Z150;pannes",
        "Arcareccio;Arcarecci",
        "Correa C8;Terça 3;Tercas",
        "Ås;Takås Z250",
        "Gording 12;Gordingen",
        "Płatew;Vaznice;Kattoorsi;Прогон"
    })
    void takesForAPurlin(String names) {
        assertThat(names.split(";", -1))
                .allSatisfy(name ->
                        assertThat(Names.PURLIN.matcher(name).find()).as(name).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "Panneau 1;Panel;Kopfplatte;Rafter;Trave di colmo;Correandolo;Glas;Base",
        "UB406*140*46;Viga;Balken;Poutre de rive"
    })
    void takesForNoPurlin(String names) {
        assertThat(names.split(";", -1))
                .allSatisfy(name ->
                        assertThat(Names.PURLIN.matcher(name).find()).as(name).isFalse());
    }
}
