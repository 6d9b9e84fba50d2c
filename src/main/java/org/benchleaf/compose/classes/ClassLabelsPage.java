package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.LabelMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Reference;
import org.benchleaf.page.LabelSheet;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.Words;

/** The labels of a class, on sheets of their own that can be cut: of what is made, of what is filled, of what is collected. */
public final class ClassLabelsPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-labels", "-labels.html");
    /** As the table of what work needs calls it. */
    private static final String RINSE_BOTTLE = "rinse bottle";

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new Section("labels", words.say("prepare.labels"), Optional.of(words.say("prepare.labels-lead")),
                List.of(labels(sheet, desk))));
        sheet.add(desk.papers(sheet));
        return desk.finish(sheet, NAME);
    }

    /** How many beakers of a bath are made for the trials of the practice sheets. */
    private static int beakers(ClassDesk desk, String solution) {
        return desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.BATH_FOR_A_TRIAL && duty.with().containsKey(solution))
                .mapToInt(Duty::count).sum();
    }

    /** The label of the bottle out of which electrodes are rinsed, with the water of the bath; none where none is laid out. */
    private static Stream<LabelSheet.Label> rinseBottle(Sheet sheet, ClassDesk desk, LabelMaker maker) {
        Stream<String> waters = desk.plan().preparations().stream()
                .flatMap(one -> desk.desk().treatment().solution(one.solution()).stream())
                .flatMap(solution -> solution.recipe() instanceof Recipe.Adjust adjust ? Stream.of(adjust.liquid()) : Stream.empty())
                .limit(1);
        return waters.flatMap(water -> desk.plan().supplies().layOut().stream().filter(item -> item.id().equals(RINSE_BOTTLE))
                .flatMap(item -> Collections.nCopies(meters(item), maker.filled(ClassPreparationPage.onTheBench(sheet, item), water,
                        Quantity.of(1, Unit.LITRE))).stream()));
    }

    /** The labels of beakers into which the stock of a bath is poured, one at each meter, and of the stock that is diluted for a trial. */
    private static Stream<LabelSheet.Label> stockBeakers(Sheet sheet, ClassDesk desk, LabelMaker maker) {
        Quantity beaker = Quantity.of(100, Unit.MILLILITRE);
        int meters = desk.plan().supplies().layOut().stream().filter(item -> item.id().equals(RINSE_BOTTLE))
                .mapToInt(ClassLabelsPage::meters).sum();
        return desk.bathsMadeInTrays().stream().flatMap(made -> {
            Recipe.Adjust adjust = (Recipe.Adjust) desk.desk().treatment().solution(made.solution()).orElseThrow().recipe();
            Stream<LabelSheet.Label> poured = Collections.nCopies(meters, maker.filled(sheet.words().say("class.stock-beaker"),
                    adjust.with(), beaker)).stream();
            return beakers(desk, made.solution()) == 0 ? poured : Stream.concat(poured, Stream.of(maker.filled(
                    sheet.words().say("class.stock-diluted"), adjust.with(), beaker)));
        });
    }

    private static int meters(ClassSupplies.LaidOut bottle) {
        return bottle.all().map(all -> (int) all.value()).orElse(1);
    }

    /** As many labels as vessels, each solution's together, then those of what is collected. */
    private static LabelSheet labels(Sheet sheet, ClassDesk desk) {
        Map<Preparation, Integer> times = new LinkedHashMap<>();
        desk.plan().preparations().forEach(one -> times.put(one,
                ClassPreparationPage.filling(desk, one.solution()).labels() + beakers(desk, one.solution())));
        LabelMaker maker = new LabelMaker(sheet, desk.desk());
        Map<String, Reference.WasteKind> kinds = desk.desk().library().reference().waste();
        List<LabelSheet.Label> waste = new ArrayList<>();
        desk.plan().supplies().waste().forEach(one -> one.cans().ifPresent(cans -> waste.addAll(Collections.nCopies(
                (int) cans.value().value(), maker.waste(one.kind().map(kinds::get).map(Reference.WasteKind::name).orElseThrow(),
                        one.solutions(), one.can().orElseThrow().holds())))));
        desk.plan().supplies().buffers().ifPresent(any -> waste.add(maker.waste(sheet.words().say("class.waste-buffers"), List.of(),
                sheet.library().formulary().constant("buffer-portion").value())));
        ClassPreparationPage.leftOfPracticeSheets(sheet, desk).forEach(left -> waste.add(maker.waste(
                sheet.words().say("class.waste-practice"), List.of(left.id()), left.atMost())));
        Stream.concat(rinseBottle(sheet, desk, maker), stockBeakers(sheet, desk, maker)).forEach(waste::add);
        return maker.make(times, waste);
    }
}
