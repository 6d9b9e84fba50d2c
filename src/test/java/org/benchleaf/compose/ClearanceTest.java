package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.benchleaf.compose.Clearance.Output;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.model.Level;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Permission.Use;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Publication.State;
import org.benchleaf.model.Story;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The chain of states is that of the American Institute for Conservation's commentaries 6 and 7: consent is written, has a date and a scope, and can be taken back. */
class ClearanceTest {

    private static final Place PLACE = Place.file("case.md");
    private static final LocalDate GIVEN = LocalDate.of(2026, 3, 2);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @Test
    void every_permission_in_force_opens_every_output() {
        Clearance clearance = Clearance.on(TODAY, cleared(given(Use.TREATMENT, Use.TEACHING, Use.TEXT, Use.PICTURES)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.values());
        assertThat(clearance.told()).isEmpty();
    }

    @Test
    void a_permission_to_treat_alone_opens_nothing_and_says_so_for_each_output() {
        Clearance clearance = Clearance.on(TODAY, cleared(given(Use.TREATMENT)));

        assertThat(clearance.isClosed()).isTrue();
        assertThat(clearance.told()).hasSize(Output.values().length).allMatch(said -> said.code().equals("CONS-004"));
    }

    @Test
    void teaching_opens_the_sheets_and_not_the_case_study() {
        Clearance clearance = Clearance.on(TODAY, cleared(given(Use.TREATMENT, Use.TEACHING)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.STEP_SHEET, Output.PREPARATION_SHEET,
                Output.RESULTS, Output.FIGURES);
    }

    @Test
    void text_opens_the_case_study_and_not_the_sheets() {
        Clearance clearance = Clearance.on(TODAY, cleared(given(Use.TREATMENT, Use.TEXT)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.CASE_STUDY, Output.RESULTS, Output.FIGURES);
    }

    @Test
    void nothing_is_opened_where_the_treatment_itself_was_not_permitted() {
        assertThat(Clearance.on(TODAY, cleared(given(Use.TEXT, Use.TEACHING, Use.PICTURES))).outputs()).isEmpty();
    }

    @Test
    void pictures_alone_make_no_page() {
        assertThat(Clearance.on(TODAY, cleared(given(Use.TREATMENT, Use.PICTURES))).outputs()).isEmpty();
    }

    @Test
    void a_permission_ends_on_the_day_it_is_withdrawn_and_not_the_day_before() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT),
                new Permission(Set.of(Use.PICTURES), "owner", GIVEN, "", Optional.of(TODAY), PLACE));

        assertThat(Clearance.on(TODAY.minusDays(1), source).allows(Output.PICTURES)).isTrue();
        Clearance after = Clearance.on(TODAY, source);
        assertThat(after.allows(Output.PICTURES)).isFalse();
        assertThat(after.told()).extracting(Message::code).contains("CONS-005");
    }

    @Test
    void a_permission_counts_from_its_day_on() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT, Use.TEACHING),
                new Permission(Set.of(Use.PICTURES), "owner", TODAY, "", Optional.empty(), PLACE));

        assertThat(Clearance.on(TODAY, source).allows(Output.PICTURES)).isTrue();
        Clearance before = Clearance.on(TODAY.minusDays(1), source);
        assertThat(before.allows(Output.PICTURES)).isFalse();
        assertThat(before.told()).extracting(Message::code).containsExactly("CONS-006");
    }

    @Test
    void a_withdrawn_permission_is_replaced_by_a_later_one() {
        TreatmentCase source = cleared(given(Use.TREATMENT),
                new Permission(Set.of(Use.TEXT), "owner", GIVEN, "", Optional.of(GIVEN.plusDays(3)), PLACE),
                new Permission(Set.of(Use.TEXT), "owner", GIVEN.plusDays(9), "", Optional.empty(), PLACE));

        assertThat(Clearance.on(GIVEN.plusDays(5), source).allows(Output.CASE_STUDY)).isFalse();
        assertThat(Clearance.on(TODAY, source).allows(Output.CASE_STUDY)).isTrue();
    }

    @Test
    void a_draft_and_a_withdrawn_case_open_nothing() {
        assertThat(Clearance.on(TODAY, of(State.DRAFT, Optional.empty(), all())).told())
                .extracting(Message::code).containsExactly("CONS-001");
        Clearance withdrawn = Clearance.on(TODAY, of(State.WITHDRAWN, Optional.empty(), all()));
        assertThat(withdrawn.isClosed()).isTrue();
        assertThat(withdrawn.told()).extracting(Message::code).containsExactly("CONS-002");
    }

    @Test
    void a_case_is_withheld_up_to_the_day_before_the_one_stated() {
        TreatmentCase source = of(State.CLEARED, Optional.of(TODAY), all());

        assertThat(Clearance.on(TODAY.minusDays(1), source).told()).extracting(Message::code).containsExactly("CONS-003");
        assertThat(Clearance.on(TODAY, source).outputs()).containsExactlyInAnyOrder(Output.values());
    }

    @Test
    void nothing_that_is_not_produced_is_passed_over_in_silence_and_nothing_said_is_an_error() {
        Random random = new Random(20260601);
        for (int round = 0; round < 500; round++) {
            List<Permission> permissions = new ArrayList<>();
            for (int i = random.nextInt(5); i > 0; i--) {
                LocalDate on = TODAY.plusDays(random.nextInt(60) - 40);
                Set<Use> uses = EnumSet.noneOf(Use.class);
                Set.of(Use.values()).stream().sorted().filter(use -> random.nextBoolean()).forEach(uses::add);
                permissions.add(new Permission(uses, "owner", on, "",
                        random.nextInt(3) == 0 ? Optional.of(on.plusDays(random.nextInt(40))) : Optional.empty(), PLACE));
            }
            Clearance clearance = Clearance.on(TODAY, of(State.CLEARED, Optional.empty(), permissions));

            assertThat(clearance.told()).noneMatch(said -> said.severity() == Severity.ERROR);
            if (clearance.outputs().size() < Output.values().length) {
                assertThat(clearance.told()).isNotEmpty();
            }
            clearance.outputs().forEach(output -> {
                assertThat(permissions).anyMatch(permission -> permission.inForce(Use.TREATMENT, TODAY));
                assertThat(output.anyOf()).anyMatch(use -> permissions.stream().anyMatch(p -> p.inForce(use, TODAY)));
            });
        }
    }

    private static List<Permission> all() {
        return List.of(given(Use.values()));
    }

    private static Permission given(Use... uses) {
        return new Permission(Set.of(uses), "owner", GIVEN, "", Optional.empty(), PLACE);
    }

    private static TreatmentCase cleared(Permission... permissions) {
        return of(State.CLEARED, Optional.empty(), List.of(permissions));
    }

    private static TreatmentCase of(State state, Optional<LocalDate> until, List<Permission> permissions) {
        Publication publication = new Publication(state, "CC-BY-4.0", until, false, permissions, PLACE);
        PrintObject object = new PrintObject("broadside", "letterpress", Optional.empty(), Optional.empty(), false,
                new PaperSupport("rag", List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                        Optional.empty(), List.of(), PLACE),
                Quantity.of(400, Unit.MILLIMETRE), Quantity.of(300, Unit.MILLIMETRE), List.of(), List.of(), List.of(), PLACE);
        return new TreatmentCase("case", "A sheet", "A sheet is treated.", Level.FOUNDATION, "en", publication, object,
                List.of(), List.of(), new Proposal(List.of(), List.of(), Optional.empty(), List.of(), Map.of(), List.of(),
                PLACE), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), new Story(List.of()),
                List.of(), Set.of(), PLACE);
    }
}
