package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.part.Clearance.Output;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.model.CaseSources;
import org.benchleaf.model.Citing;
import org.benchleaf.model.Level;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Permission.Covered;
import org.benchleaf.model.Permission.Use;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Publication.State;
import org.benchleaf.model.Story;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Untold;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.SourceLicenceReader;
import org.junit.jupiter.api.Test;

/**
 * The chain of states is that of the American Institute for Conservation's commentaries 6 and 7: consent is written, has a date and a
 * scope, and can be taken back.
 */
class ClearanceTest {

    private static final Place PLACE = Place.file("case.md");
    private static final LocalDate GIVEN = LocalDate.of(2026, 3, 2);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @Test
    void every_permission_in_force_opens_every_output() {
        Clearance clearance = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEACHING, Use.TEXT, Use.PICTURES)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.values());
        assertThat(clearance.told()).isEmpty();
    }

    @Test
    void a_permission_to_treat_alone_opens_nothing_and_says_so_for_each_output() {
        Clearance clearance = clearance(TODAY, cleared(given(Use.TREATMENT)));

        assertThat(clearance.outputs()).isEmpty();
        assertThat(clearance.told()).hasSize(Output.values().length).allMatch(said -> said.code().equals("CONS-004"));
    }

    @Test
    void teaching_opens_the_sheets_and_not_the_case_study() {
        Clearance clearance = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEACHING)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.STEP_SHEET, Output.PREPARATION_SHEET,
                Output.RESULTS, Output.DATA, Output.FIGURES);
    }

    @Test
    void text_opens_the_case_study_and_not_the_sheets() {
        Clearance clearance = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEXT)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.CASE_STUDY, Output.RESULTS, Output.DATA, Output.FIGURES);
    }

    @Test
    void nothing_is_opened_where_the_treatment_itself_was_not_permitted() {
        assertThat(clearance(TODAY, cleared(given(Use.TEXT, Use.TEACHING, Use.PICTURES))).outputs()).isEmpty();
    }

    @Test
    void pictures_alone_make_no_page() {
        assertThat(clearance(TODAY, cleared(given(Use.TREATMENT, Use.PICTURES))).outputs()).isEmpty();
    }

    @Test
    void a_file_made_of_several_outputs_stands_only_where_each_may_be() {
        Clearance words = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEXT, Use.TEACHING)));
        assertThat(words.allowsFile("steps-whole.html")).isTrue();
        assertThat(words.allowsFile("steps-whole-with-pictures.html")).isFalse();
        assertThat(words.allowsFile("class-spring.html")).isTrue();
        Clearance open = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEXT, Use.PICTURES)));
        assertThat(open.allowsFile("index-whole-with-pictures.html")).isTrue();
        assertThat(Stream.of("steps-whole.html", "steps-whole-with-pictures.html", "preparation-whole.html", "class-spring.html",
                "class-spring-plan.csv", "class-spring-whole-with-pictures.html")).noneMatch(open::allowsFile);
    }

    @Test
    void a_permission_ends_on_the_day_it_is_withdrawn_and_not_the_day_before() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT),
                new Permission(Set.of(Use.PICTURES), "owner", GIVEN, Set.of(), "", Optional.empty(), Optional.of(TODAY), PLACE));

        assertThat(clearance(TODAY.minusDays(1), source).allows(Output.PICTURES)).isTrue();
        Clearance after = clearance(TODAY, source);
        assertThat(after.allows(Output.PICTURES)).isFalse();
        assertThat(after.told()).extracting(Message::code).contains("CONS-005");
    }

    @Test
    void a_permission_counts_from_its_day_on() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT, Use.TEACHING),
                new Permission(Set.of(Use.PICTURES), "owner", TODAY, Set.of(), "", Optional.empty(), Optional.empty(), PLACE));

        assertThat(clearance(TODAY, source).allows(Output.PICTURES)).isTrue();
        Clearance before = clearance(TODAY.minusDays(1), source);
        assertThat(before.allows(Output.PICTURES)).isFalse();
        assertThat(before.told()).extracting(Message::code).containsExactly("CONS-006");
    }

    @Test
    void a_withdrawn_permission_is_replaced_by_a_later_one() {
        TreatmentCase source = cleared(given(Use.TREATMENT),
                new Permission(Set.of(Use.TEXT), "owner", GIVEN, Set.of(), "", Optional.empty(), Optional.of(GIVEN.plusDays(3)), PLACE),
                new Permission(Set.of(Use.TEXT), "owner", GIVEN.plusDays(9), Set.of(), "", Optional.empty(), Optional.empty(), PLACE));

        assertThat(clearance(GIVEN.plusDays(5), source).allows(Output.CASE_STUDY)).isFalse();
        assertThat(clearance(TODAY, source).allows(Output.CASE_STUDY)).isTrue();
    }

    @Test
    void a_draft_and_a_withdrawn_case_open_nothing() {
        assertThat(clearance(TODAY, of(State.DRAFT, Optional.empty(), all())).told())
                .extracting(Message::code).containsExactly("CONS-001");
        Clearance withdrawn = clearance(TODAY, of(State.WITHDRAWN, Optional.empty(), all()));
        assertThat(withdrawn.outputs()).isEmpty();
        assertThat(withdrawn.told()).extracting(Message::code).containsExactly("CONS-002");
    }

    @Test
    void a_case_is_withheld_up_to_the_day_before_the_one_stated() {
        TreatmentCase source = of(State.CLEARED, Optional.of(TODAY), all());

        assertThat(clearance(TODAY.minusDays(1), source).told()).extracting(Message::code).containsExactly("CONS-003");
        assertThat(clearance(TODAY, source).outputs()).containsExactlyInAnyOrder(Output.values());
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
                permissions.add(new Permission(uses, "owner", on, Set.of(), "", Optional.empty(),
                        random.nextInt(3) == 0 ? Optional.of(on.plusDays(random.nextInt(40))) : Optional.empty(), PLACE));
            }
            Clearance clearance = clearance(TODAY, of(State.CLEARED, Optional.empty(), permissions));

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

    @Test
    void a_permission_holds_up_to_its_last_day() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT), new Permission(Set.of(Use.PICTURES), "owner", GIVEN,
                Set.of(), "", Optional.of(TODAY), Optional.empty(), PLACE));

        assertThat(clearance(TODAY, source).allows(Output.PICTURES)).isTrue();
        Clearance after = clearance(TODAY.plusDays(1), source);
        assertThat(after.allows(Output.PICTURES)).isFalse();
        assertThat(after.told()).extracting(Message::code).contains("CONS-007");
    }

    @Test
    void a_permission_covers_what_it_names_and_nothing_else() {
        Clearance clearance = clearance(TODAY, cleared(given(Use.TREATMENT), covering(Covered.STEP_SHEET, Covered.PICTURES)));

        assertThat(clearance.outputs()).containsExactlyInAnyOrder(Output.STEP_SHEET, Output.PICTURES);
        assertThat(clearance.told()).extracting(Message::code).containsOnly("CONS-008").hasSize(5);
    }

    @Test
    void teaching_on_site_opens_the_training_site_and_no_other() {
        TreatmentCase source = cleared(given(Use.TREATMENT), covering(Covered.TEACHING_ON_SITE));

        assertThat(clearance(TODAY, source).outputs()).isEmpty();
        assertThat(Clearance.on(TODAY, source.publication(), Audience.PUBLIC).outputs()).isEmpty();
        assertThat(Clearance.on(TODAY, source.publication(), Audience.TRAINEES).outputs())
                .containsExactlyInAnyOrder(Output.values());
    }

    @Test
    void a_permission_for_the_web_alone_lets_nothing_be_printed() {
        Clearance web = clearance(TODAY, cleared(given(Use.TREATMENT, Use.TEXT), covering(Covered.WEB)));

        assertThat(web.allows(Output.STEP_SHEET)).isTrue();
        assertThat(web.prints(Output.STEP_SHEET)).isFalse();
        assertThat(web.prints(Output.CASE_STUDY)).isTrue();
        assertThat(clearance(TODAY, cleared(given(Use.TREATMENT), covering(Covered.PRINT))).outputs()).isEmpty();
    }

    @Test
    void what_only_teaching_allows_is_not_for_a_public_whose_sheets_stand_apart() {
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEACHING));

        assertThat(Clearance.on(TODAY, source.publication(), Audience.PUBLIC).outputs()).isEmpty();
        Publication all = cleared(given(Use.values())).publication();
        assertThat(Clearance.on(TODAY, all, Audience.PUBLIC).outputs()).containsExactlyInAnyOrder(Output.CASE_STUDY,
                Output.RESULTS, Output.DATA, Output.FIGURES, Output.PICTURES);
    }

    @Test
    void strengths_that_are_not_for_the_public_hold_the_sheets_and_figures_back_where_everybody_reads() {
        Publication quiet = new Publication(State.CLEARED, "CC-BY-4.0", Optional.empty(), Optional.empty(), Optional.of(false), all(),
                Citing.UNSAID, PLACE);

        Clearance one = Clearance.on(TODAY, quiet, Audience.EVERYBODY);
        assertThat(one.outputs()).containsExactlyInAnyOrder(Output.CASE_STUDY, Output.RESULTS, Output.DATA, Output.PICTURES);
        assertThat(one.strengths()).isFalse();
        assertThat(one.told()).extracting(Message::code).containsExactly("CONS-010");
        Clearance trainees = Clearance.on(TODAY, quiet, Audience.TRAINEES);
        assertThat(trainees.outputs()).containsExactlyInAnyOrder(Output.values());
        assertThat(trainees.strengths()).isTrue();
        assertThat(trainees.told()).isEmpty();
        assertThat(Clearance.on(TODAY, quiet, Audience.PUBLIC).told()).isEmpty();
    }

    @Test
    void a_recipe_that_is_never_for_the_public_stands_in_the_training_site_alone() {
        Publication all = cleared(given(Use.values())).publication();
        for (Audience audience : Audience.values()) {
            Clearance clearance = Clearance.on(TODAY, all, audience)
                    .withRecipesWithheld("the poultice holds a solvent that no public recipe may name", PLACE);
            boolean shown = audience == Audience.TRAINEES;
            assertThat(clearance.allows(Output.STEP_SHEET)).isEqualTo(shown);
            assertThat(clearance.allows(Output.PREPARATION_SHEET)).isEqualTo(shown);
            assertThat(clearance.allows(Output.FIGURES)).isEqualTo(shown);
            assertThat(clearance.strengths()).isEqualTo(shown);
            assertThat(clearance.told()).extracting(Message::code)
                    .isEqualTo(audience == Audience.EVERYBODY ? List.of("CONS-011") : List.of());
        }
    }

    @Test
    void a_note_is_shown_while_its_permission_holds() {
        Permission noted = new Permission(Set.of(Use.TEXT), "owner", GIVEN, Set.of(), "not the wording", Optional.empty(),
                Optional.of(TODAY), PLACE);
        TreatmentCase source = cleared(given(Use.TREATMENT, Use.TEXT, Use.TEACHING, Use.PICTURES), noted);

        assertThat(clearance(TODAY.minusDays(1), source).told()).extracting(Message::code).containsExactly("CONS-009");
        assertThat(clearance(TODAY, source).told()).isEmpty();
    }

    @Test
    void a_retold_case_asks_no_owner_but_the_licence_of_its_source() {
        for (Audience audience : Audience.values()) {
            Clearance clearance = Clearance.on(TODAY, retold("CC-BY-4.0"), audience);
            assertThat(clearance.outputs()).isNotEmpty();
            assertThat(clearance.printed()).isEqualTo(clearance.outputs());
            assertThat(clearance.told()).isEmpty();
        }
        assertThat(Clearance.on(TODAY, retold("CC-BY-4.0"), Audience.EVERYBODY).outputs()).containsExactlyInAnyOrder(Output.values());
    }

    @Test
    void a_licence_that_forbids_or_is_not_known_keeps_a_retelling_in() {
        Map.of("CC-BY-ND-4.0", "CONS-020", "all rights reserved", "CONS-020", "not known", "CONS-021", "CC-BY-9.0", "CONS-021")
                .forEach((licence, code) -> {
                    Clearance clearance = Clearance.on(TODAY, retold(licence), Audience.EVERYBODY);
                    assertThat(clearance.outputs()).as(licence).isEmpty();
                    assertThat(clearance.told()).extracting(Message::code).as(licence).containsExactly(code);
                });
    }

    @Test
    void what_the_licence_of_a_source_keeps_in_is_told_once_with_all_of_it() {
        assertThat(Clearance.on(TODAY, retold("not known"), Audience.EVERYBODY).told()).singleElement().satisfies(message -> {
            assertThat(message.what()).endsWith("Not produced: the case study, the step sheet, the preparation sheet, the results page,"
                    + " the set of data files, the file of figures, the set of pictures.");
            assertThat(message.fix()).contains("permission for text or teaching or pictures");
        });
        assertThat(Clearance.on(TODAY, retold("not known", given(Use.TEXT)), Audience.EVERYBODY).told())
                .filteredOn(message -> message.code().equals("CONS-021")).singleElement().satisfies(message ->
                        assertThat(message.what()).endsWith("Not produced: the step sheet, the preparation sheet, the set of pictures."));
    }

    @Test
    void a_permission_of_a_source_that_was_taken_back_is_told_as_that() {
        Permission back = new Permission(Set.of(Use.TEXT), "publisher", GIVEN, Set.of(), "", Optional.empty(), Optional.of(TODAY), PLACE);
        assertThat(Clearance.on(TODAY, retold("CC-BY-4.0", back), Audience.EVERYBODY).told()).extracting(Message::code)
                .contains("CONS-005").doesNotContain("CONS-021");
    }

    @Test
    void a_permission_of_whoever_holds_the_rights_opens_what_the_licence_of_a_source_does_not() {
        Clearance clearance = Clearance.on(TODAY, retold("all rights reserved", given(Use.TEXT)), Audience.EVERYBODY);

        assertThat(clearance.allows(Output.CASE_STUDY)).isTrue();
        assertThat(clearance.allows(Output.STEP_SHEET)).isFalse();
        assertThat(clearance.told()).extracting(Message::code).containsOnly("CONS-020");
    }

    @Test
    void what_was_taken_back_is_not_opened_by_the_licence_of_a_source() {
        for (Use use : List.of(Use.TREATMENT, Use.TEXT)) {
            Permission back = new Permission(Set.of(use), "publisher", GIVEN, Set.of(), "", Optional.empty(), Optional.of(TODAY), PLACE);
            assertThat(Clearance.on(TODAY, retold("CC-BY-4.0", back), Audience.EVERYBODY).allows(Output.CASE_STUDY)).isFalse();
            assertThat(Clearance.on(TODAY.minusDays(1), retold("CC-BY-4.0", back), Audience.EVERYBODY).allows(Output.CASE_STUDY)).isTrue();
        }
    }

    @Test
    void a_condition_of_a_licence_is_shown() {
        assertThat(Clearance.on(TODAY, retold("CC-BY-NC-4.0"), Audience.EVERYBODY).told()).extracting(Message::code)
                .containsExactly("CONS-022");
    }

    private static Publication retold(String licence, Permission... permissions) {
        return new Publication(State.CLEARED, "CC-BY-4.0", Optional.of(SourceLicenceReader.of(licence, PLACE)),
                Optional.empty(), Optional.of(true),
                List.of(permissions), Citing.UNSAID, PLACE);
    }

    private static Permission covering(Covered... covered) {
        return new Permission(Set.of(Use.TEXT, Use.TEACHING, Use.PICTURES), "owner", GIVEN, Set.of(covered), "",
                Optional.empty(), Optional.empty(), PLACE);
    }

    private static Clearance clearance(LocalDate day, TreatmentCase source) {
        return Clearance.on(day, source.publication(), Audience.EVERYBODY);
    }

    private static List<Permission> all() {
        return List.of(given(Use.values()));
    }

    private static Permission given(Use... uses) {
        return new Permission(Set.of(uses), "owner", GIVEN, Set.of(), "", Optional.empty(), Optional.empty(), PLACE);
    }

    private static TreatmentCase cleared(Permission... permissions) {
        return of(State.CLEARED, Optional.empty(), List.of(permissions));
    }

    private static TreatmentCase of(State state, Optional<LocalDate> until, List<Permission> permissions) {
        Publication publication = new Publication(state, "CC-BY-4.0", Optional.empty(), until, Optional.of(true), permissions,
                Citing.UNSAID, PLACE);
        PrintObject object = new PrintObject("broadside", "letterpress", Optional.empty(), Optional.empty(), false,
                new PaperSupport("rag", List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                        Optional.empty(), List.of(), PLACE),
                Optional.of(new PrintObject.SheetSize(Quantity.of(400, Unit.MILLIMETRE),
                        Quantity.of(300, Unit.MILLIMETRE))), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), List.of(),
                        List.of(), PLACE);
        return new TreatmentCase("case", "A sheet", "A sheet is treated.", Optional.of(Level.FOUNDATION), "en", publication, object,
                List.of(), List.of(), new Proposal(List.of(), List.of(), Optional.empty(), List.of(), Map.of(), List.of(),
                PLACE), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), new Story(List.of()),
                CaseSources.NONE, List.of(), true, Set.of(), Untold.NONE, PLACE);
    }
}
