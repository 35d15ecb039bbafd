using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Library;

/// <summary>Each kind of mistake in a clinic's file, and what its one problem says.</summary>
public sealed class BadLibraryTests
{
    private const string Tail = "source: Ours, standing: common practice";
    private const string Sit = "position: Seated, muscle: quadriceps, purpose: Test, contraction: dynamic, repetition_time: 4 s, resisted: no, patient_name: Push";

    private static FileProblem Only(string part, string text)
    {
        using ClinicFolder clinic = ClinicFolder.With(part, text);
        LibraryResult result = clinic.Read();

        Assert.Null(result.Library);
        FileProblem problem = Assert.Single(result.Problems);
        Assert.Equal(clinic.FileOf(part), problem.File);
        return problem;
    }

    // Columns: part, text after the schema line, line, field, words of the mistake, words of what is allowed, what was found.
    public static TheoryData<string, string, int?, string, string, string, string> Mistakes => new()
    {
        { "limits", $"limits:\n  stim.first-day: {{ title: A, value: 2 wk, {Tail} }}", 3, "limits.stim.first-day.value", "unit that does not fit", "a number with d, from 0 to 90 d", "2 wk" },
        { "limits", $"limits:\n  ladder.lag-closed: {{ title: A, value: 5, {Tail} }}", 3, "limits.ladder.lag-closed.value", "has no unit", "a number with deg, from 0 to 30 deg", "5" },
        { "limits", $"limits:\n  ladder.lag-closed: {{ title: A, value: 50 deg, {Tail} }}", 3, "limits.ladder.lag-closed.value", "out of range", "from 0 to 30 deg", "50 deg" },
        { "limits", $"limits:\n  ladder.lag-close: {{ title: A, value: 5 deg, {Tail} }}", 3, "limits.ladder.lag-close", "Did you mean \"ladder.lag-closed\"?", "shipped ids of limits.yaml", "ladder.lag-close" },
        { "limits", "limits:\n  stim.first-day: { remove: yes }", 3, "limits.stim.first-day", "needed by the program", "none removed", "remove: yes" },
        { "limits", $"limits:\n  ladder.stop-pre-op: {{ title: A, value: 40 %, {Tail} }}", 3, "limits.ladder.stop-pre-op.value", "less than ladder.reduced-to-low-pre-op", "at least 45 %", "40 %" },
        { "limits", $"limits:\n  ladder.high-to-reduced-index: {{ title: A, value: 52 %, {Tail} }}", 3, "limits.ladder.high-to-reduced-index.value", "more than ladder.reduced-to-low-index", "at most 50 %", "52 %" },
        { "limits", "limits:\n  stim.first-day: { title: A, value: 1 d, standing: seen }", 3, "limits.stim.first-day.source", "missing", "required", "" },
        { "limits", "limits:\n  stim.first-day: { title: A, value: 1 d, source: Ours, standing: sen }", 3, "limits.stim.first-day.standing", "Did you mean \"seen\"?", "seen, derived, from memory, common practice", "sen" },
        { "limits", $"limits:\n  stim.first-day: {{ title: A, value: 1 d, sourse: B, {Tail} }}", 3, "limits.stim.first-day.sourse", "Did you mean \"source\"?", "title, value, source, standing", "sourse" },
        { "limits", "limit: {}\nlimits: {}", 2, "limit", "Did you mean \"limits\"?", "schema, limits", "limit" },
        { "limits", "schema: limits/2\nlimits: {}", 1, "schema", "Did you mean \"limits/1\"?", "limits/1", "limits/2" },
        { "limits", "limits:\n  Stim First: { remove: yes }", 3, "limits", "id is not allowed", "2 to 40 lower-case letters", "Stim First" },
        { "limits", "limits: 5", 2, "limits", "map of fields", "name: value", "5" },
        { "measures", "measures:\n  flexion_active: { title: A, unit: rad, better: higher is better, least: 0, most: 3, error: ordinal, " + Tail + " }", 3, "measures.flexion_active.unit", "another unit", "deg", "rad" },
        { "measures", "measures:\n  extension_lag: { remove: yes }", 3, "measures.extension_lag", "needed by the program", "none removed", "remove: yes" },
        { "measures", "measures:\n  timed_up_and_go: { remove: yes }", 3, "measures.timed_up_and_go", "needed by the program", "none removed", "remove: yes" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 9, most: 3, error: ordinal, " + Tail + " }", 3, "measures.reach.most", "not more than the least", "more than 9", "3" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 0, most: 9, error: ordinal, standard_error: 1, " + Tail + " }", 3, "measures.reach.standard_error", "no standard error", "nothing here", "1" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 0, most: 9, error: linear, standard_error: 1, real_step: 3, confirmed_step: 1, " + Tail + " }", 3, "measures.reach.confirmed_step", "Only a measure in steps", "under real_step", "1" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 0, most: 9, error: ordinal, real_step: 2, confirmed_step: 2, " + Tail + " }", 3, "measures.reach.confirmed_step", "smaller than the real step", "under real_step", "2" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 0, most: 9, error: linear, important_gain: { amount: 2, " + Tail + " }, " + Tail + " }", 3, "measures.reach.important_gain.population", "missing", "required", "" },
        { "measures", "measures:\n  reach: { title: A, unit: cm, better: higher is better, least: 0, most: 9, error: linear, changed: { standard_error: 2 km, " + Tail + " }, " + Tail + " }", 3, "measures.reach.changed.standard_error", "not a number", "from 0.001 to 1000", "2 km" },
        { "limits", $"limits:\n  change.early-worsening: {{ title: A, value: 6, {Tail} }}", 3, "limits.change.early-worsening.value", "out of range", "from 0.1 to 1", "6" },
        { "ladder", "rungs:\n  low-volume: { title: Low, short: Low, session_share: 60 %, expected_weeks: 3, " + Tail + " }", 3, "rungs.low-volume.session_share", "more sessions than the one before it", "at most 50 %", "60 %" },
        { "ladder", "rungs:\n  stopped: { title: Stopped, short: Stopped, session_share: 0 %, expected_weeks: 3, " + Tail + " }", 3, "rungs.stopped.expected_weeks", "does not end", "nothing", "3" },
        { "ladder", "rungs:\n  reduced: { title: Reduced, short: Much reduced, session_share: 50 %, expected_weeks: 3, " + Tail + " }", 3, "rungs.reduced.short", "does not fit", "1 to 8 characters", "Much reduced" },
        { "regimens", "default: strong-15-twice-dayly\nregimens: {}", 2, "default", "Did you mean \"strong-15-twice-daily\"?", "quarter-hour-daily", "strong-15-twice-dayly" },
        { "regimens", "regimens:\n  strong-15-twice-daily: { remove: yes }", 3, "regimens.strong-15-twice-daily", "needed by the program", "none removed", "remove: yes" },
        { "regimens", "default: half-hour\nregimens:\n  half-hour: { title: A, population: B, session_length: 30 min, outcome: C, " + Tail + " }", 2, "default", "leaves open what a plan needs", "days_a_week", "half-hour" },
        { "regimens", "regimens:\n  ours: { title: A, population: B, on: 2 s, ramp_up: 3 s, ramps: inside, outcome: C, " + Tail + " }", 3, "regimens.ours.on", "longer than the on-time", "at least 3 s", "2 s" },
        { "regimens", "regimens:\n  ours: { title: A, population: B, width: 250 (from memory), outcome: C, " + Tail + " }", 3, "regimens.ours.width", "has no unit", "us or ms", "250" },
        { "regimens", "regimens:\n  ours: { title: A, population: B, waveform: square, outcome: C, " + Tail + " }", 3, "regimens.ours.waveform", "not known", "burst triangle", "square" },
        { "exercises", "exercises:\n  quad-set: { remove: yes }", null, "exercises", "nothing to begin with", "\"quads strength\" with rank 1 and no needs", "" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: Eleven char, slot: bend, rank: 6, start: {{ bout: 5 min }}, grows: {{ by: steady }}, {Sit}, {Tail} }}", 3, "exercises.push.short", "does not fit", "1 to 10 characters", "Eleven char" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: B, slot: bend, rank: 6, start: {{ sets: 2, bout: 5 min }}, grows: {{ by: steady }}, {Sit}, {Tail} }}", 3, "exercises.push.start", "neither in repetitions nor in time", "sets and repetitions, or bout alone", "sets, bout" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: B, slot: bend, rank: 6, start: {{ bout: 5 min }}, grows: {{ by: hold, step: 1 s, every_weeks: 1, up_to: 9 s }}, {Sit}, {Tail} }}", 3, "exercises.push.grows.by", "nothing of this kind", "what the start names", "hold" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: B, slot: bend, rank: 6, start: {{ sets: 2, repetitions: 12 }}, grows: {{ by: repetitions, step: 1, every_weeks: 1, up_to: 10 }}, {Sit}, {Tail} }}", 3, "exercises.push.grows.up_to", "starts above", "at least 12", "10" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: B, slot: bend, rank: 6, start: {{ bout: 5 min }}, grows: {{ by: dapre }}, {Sit}, {Tail} }}", 3, "exercises.push.grows.by", "no sets whose load could be judged", "a start in sets and repetitions", "dapre" },
        { "exercises", $"exercises:\n  push: {{ title: A, short: B, slot: bend, rank: 6, start: {{ sets: 2, repetitions: 12, load: heavy }}, grows: {{ by: steady }}, {Sit}, {Tail} }}", 3, "exercises.push.start.load", "not a load", "effort from 6 to 20", "heavy" },
        { "red-flags", "flags:\n  infection: { remove: yes }", 3, "flags.infection", "needed by the program", "none removed", "remove: yes" },
        { "red-flags", $"flags:\n  ours: {{ title: A, checklist: [Look], {Tail} }}", 3, "flags.ours.questions", "Nothing can raise this flag", "covers_all", "" },
        { "red-flags", $"flags:\n  ours: {{ title: A, covers_all: our_sign, questions: {{ other: B }}, checklist: [Look], {Tail} }}", 3, "flags.ours.covers_all", "no such question", "of this flag or of a sign", "our_sign" },
        { "red-flags", $"flags:\n  ours: {{ title: A, questions: {{ calf_larger: Larger? }}, checklist: [Look], {Tail} }}", 3, "flags.ours.questions.calf_larger", "in other words", "Is the calf 3 cm or more larger round than the other one?", "Larger?" },
        { "red-flags", $"flags:\n  ours: {{ title: A, questions: {{ our_sign: B }}, points: {{ our_sgin: 1 }}, checklist: [Look], {Tail} }}", 3, "flags.ours.points.our_sgin", "Did you mean \"our_sign\"?", "the id of a question", "our_sgin" },
        { "red-flags", $"flags:\n  ours: {{ title: A, questions: {{ our_sign: B }}, from_day: {{ our_sign: -1 }}, checklist: [Look], {Tail} }}", 3, "flags.ours.from_day.our_sign", "out of range", "from 0 to 365 d", "-1" },
        { "red-flags", $"flags:\n  ours: {{ title: A, questions: {{ our-sign: B }}, checklist: [Look], {Tail} }}", 3, "flags.ours.questions.our-sign", "id is not allowed", "letters, digits or", "our-sign" },
        { "red-flags", $"flags:\n  ours: {{ title: A, questions: {{ our_sign: B }}, {Tail} }}", 3, "flags.ours.checklist", "missing", "required", "" },
        { "milestones", "milestones:\n  bend: { title: A, measure: flexion_aktive, week: 3, target: 95 deg, drives: no, " + Tail + " }", 3, "milestones.bend.measure", "Did you mean \"flexion_active\"?", "flexion_active", "flexion_aktive" },
        { "milestones", "milestones:\n  bend: { title: A, measure: flexion_active, week: 3, target: 70 deg, drives: yes, " + Tail + " }", 3, "milestones.bend.target", "worse than flexion-week-2", "at least 90 deg", "70" },
        { "milestones", "milestones:\n  flexion-week-1: { title: A, measure: flexion_active, week: 1, target: 95 deg, drives: yes, " + Tail + " }", 3, "milestones.flexion-week-1.target", "better than flexion-week-2", "at most 90 deg", "95" },
        { "milestones", "milestones:\n  bend: { title: A, measure: extension_passive, week: 8, target: 3 deg, drives: yes, " + Tail + " }", 3, "milestones.bend.week", "in the same week", "one leading milestone a week", "8" },
        { "milestones", "milestones:\n  bend: { title: A, measure: flexion_active, week: 2.3, target: 95 deg, drives: no, " + Tail + " }", 3, "milestones.bend.week", "neither whole nor half", "as in 1.5", "2.3" },
        { "milestones", "milestones:\n  bend: { title: A, measure: flexion_active, week: 3, target: 900 deg, drives: no, " + Tail + " }", 3, "milestones.bend.target", "out of range", "from 0 to 160 deg", "900 deg" },
        { "milestones", "milestones:\n  stand: { title: A, week: 3, drives: yes, " + Tail + " }", 3, "milestones.stand.drives", "Only a measured target", "no, or a measure and a target", "yes" },
        { "milestones", "milestones:\n  straight-leg-raise: { remove: yes }", 3, "milestones.straight-leg-raise", "needed by the program", "none removed", "remove: yes" },
        { "screening", "screening:\n  clott: { remove: yes }", 3, "screening.clott.remove", "Did you mean \"clot\"?", "id of a shipped entry", "clott" },
        { "screening", "screening:\n  clot: { question: A, kind: contraindication, where: B, action: C, clearance: no, sessions_a_day_at_most: 1, " + Tail + " }", 3, "screening.clot.sessions_a_day_at_most", "Only a precaution", "kind: precaution", "1" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_once_with_its_place_and_what_is_allowed(
        string part, string text, int? line, string field, string wrong, string allowed, string found)
    {
        FileProblem problem = Only(part, text);

        Assert.Equal((line, field, found), (problem.Line, problem.Field, problem.Found));
        Assert.Contains(wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.Contains(allowed, problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clinic_s_earlier_step_is_told_when_a_shipped_later_one_contradicts_it()
    {
        FileProblem problem = Only("ladder", "rungs:\n  reduced: { title: Reduced, short: Reduced, session_share: 10 %, expected_weeks: 2, " + Tail + " }");

        Assert.Equal((3, "rungs.reduced.session_share", "at least 20 %", "10 %"), (problem.Line, problem.Field, problem.Allowed, problem.Found));
    }

    [Fact]
    public void Every_mistake_of_every_file_is_told_in_the_order_of_the_files()
    {
        using ClinicFolder clinic = ClinicFolder.With("limits", "limits:\n  stim.first-day: { title: A, value: 500 d, standing: sen }")
            .And("screening", "screening:\n  clot: { kind: bar }");
        LibraryResult result = clinic.Read();

        Assert.Null(result.Library);
        Assert.Equal(
            ["value", "source", "standing", "question", "kind", "where", "action", "clearance", "source", "standing"],
            result.Problems.Select(problem => problem.Field.Split('.')[^1]));
    }

    [Fact]
    public void A_file_of_another_name_is_refused_with_the_name_it_may_have_meant()
    {
        using ClinicFolder clinic = ClinicFolder.With("limit", "limits: {}");
        FileProblem problem = Assert.Single(clinic.Read().Problems);

        Assert.Equal((clinic.FileOf("limit"), (int?)null, "limit.yaml"), (problem.File, problem.Line, problem.Found));
        Assert.Contains("Did you mean \"limits.yaml\"?", problem.Wrong, StringComparison.Ordinal);
        Assert.Contains("milestones.yaml", problem.Allowed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("limits: {\n", "cut short")]
    [InlineData("limits: &a {}\nother: *a\n", "Anchors and aliases")]
    [InlineData("limits: {}\nlimits: {}\n", "already stands on line 2")]
    [InlineData("limits: \u0000\n", "zero byte")]
    [InlineData("limits: {} # \u202e\n", "invisible character")]
    public void A_file_that_is_not_plain_yaml_is_refused_as_a_whole(string text, string wrong)
    {
        using ClinicFolder clinic = ClinicFolder.With("limits", text);
        LibraryResult result = clinic.Read();

        Assert.Null(result.Library);
        Assert.Contains(wrong, result.Problems[0].Wrong, StringComparison.Ordinal);
        Assert.Equal(clinic.FileOf("limits"), result.Problems[0].File);
    }

    [Fact]
    public void A_file_beyond_the_size_limit_is_refused_unread()
    {
        using ClinicFolder clinic = ClinicFolder.With("limits", new string('#', 1_000_001));

        Assert.Contains("1000000 bytes", Assert.Single(clinic.Read().Problems).Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_problem()
    {
        LibraryResult result = LibraryReader.Read(Path.Combine(Path.GetTempPath(), "no-such-folder-of-ours"));

        Assert.Null(result.Library);
        Assert.Contains("folder cannot be read", Assert.Single(result.Problems).Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("milestones")]
    [InlineData("exercises")]
    [InlineData("measures")]
    [InlineData("regimens")]
    [InlineData("screening")]
    public void More_mistakes_than_are_told_do_no_harm(string part)
    {
        using ClinicFolder clinic = ClinicFolder.With(part, part + ":\n" + string.Concat(Enumerable.Range(0, 200).Select(n => $"  entry-{n}: {{ drives: yes }}\n")));
        LibraryResult result = clinic.Read();

        Assert.Null(result.Library);
        Assert.Equal(100, result.Problems.Length);
    }
}
