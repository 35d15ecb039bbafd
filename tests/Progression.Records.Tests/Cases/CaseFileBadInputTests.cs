using System.Text;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

/// <summary>Each slip a file can hold gives one message with line, field, what is allowed and what was found.</summary>
public sealed class CaseFileBadInputTests
{
    [Theory]
    [InlineData("date: 2026-03-02", "date: 2026-03-10", 5, "operation.date", "lies in the future", "a day from 2000-01-01 to 2026-03-09", "2026-03-10")]
    [InlineData("born: 1957-05-14", "born: 2026-03-03", 5, "operation.date", "before the birth", "a day from 2026-03-03 to 2026-03-09", "2026-03-02")]
    [InlineData("born: 1957-05-14", "born: 2026-03-10", 3, "born", "in the future", "a day from 1900-01-01 to 2026-03-09", "2026-03-10")]
    [InlineData("born: 1957-05-14", "born: 1899-12-31", 3, "born", "too early", "a day from 1900-01-01 to 2026-03-09", "1899-12-31")]
    [InlineData("born: 1957-05-14", "born: 1957-02-29", 3, "born", "not a day of the calendar", "year-month-day", "1957-02-29")]
    [InlineData("- date: 2026-03-06\n    readings", "- date: 2026-03-01\n    readings", 30, "assessments[2].date", "before the operation", "a day from 2026-03-02 to 2026-03-09", "2026-03-01")]
    [InlineData("- date: 2026-03-06\n    readings", "- date: 2026-03-10\n    readings", 30, "assessments[2].date", "in the future", "to 2026-03-09", "2026-03-10")]
    [InlineData("- date: 2026-03-06\n    readings", "- date: 2026-03-05\n    readings", 30, "assessments[2].date", "Another assessment of this day begins on line 23.", "one assessment a day", "2026-03-05")]
    [InlineData("date: 2026-02-16", "date: 2026-03-03", 19, "pre_op.date", "after the operation", "to 2026-03-02", "2026-03-03")]
    [InlineData("- date: 2026-03-06\n    contractions", "- date: 2026-03-01\n    contractions", 36, "sessions[1].date", "before the operation", "from 2026-03-02", "2026-03-01")]
    [InlineData("  date: 2026-03-05\n  answers", "  date: 2026-03-10\n  answers", 14, "screening.date", "in the future", "to 2026-03-09", "2026-03-10")]
    [InlineData("weeks: 6", "from: 2026-03-01", 12, "plan.from", "no week 0", "a day from 2026-03-02 to 2026-08-30", "2026-03-01")]
    [InlineData("weeks: 6", "weeks: 0", 12, "plan.weeks", "out of range", "a whole number from 1 to 26 weeks", "0")]
    [InlineData("weeks: 6", "weeks: 27", 12, "plan.weeks", "out of range", "a whole number from 1 to 26 weeks", "27")]
    public void Days_and_weeks_that_cannot_be(string piece, string by, int line, string field, string wrong, string allowed, string found) =>
        Check(piece, by, (line, field, wrong, allowed, found));

    [Theory]
    [InlineData("82 kg", "82", 8, "body_mass", "no unit", "a number with kg, from 20 to 350 kg", "82")]
    [InlineData("82 kg", "180 lb", 8, "body_mass", "unit that does not fit", "a number with kg", "180 lb")]
    [InlineData("82 kg", "820 kg", 8, "body_mass", "out of range", "from 20 to 350 kg", "820 kg")]
    [InlineData("82 kg", "82,5 kg", 8, "body_mass", "comma", "a number with kg", "82,5 kg")]
    [InlineData("62 deg", "900 deg", 25, "assessments[1].readings.flexion_active", "out of range", "from 0 to 160 deg", "900 deg")]
    [InlineData("62 deg", "62", 25, "assessments[1].readings.flexion_active", "no unit", "a number with deg", "62")]
    [InlineData("62 deg", "62 rad", 25, "assessments[1].readings.flexion_active", "unit that does not fit", "a number with deg", "62 rad")]
    [InlineData("18 deg", "-16 deg", 26, "assessments[1].readings.extension_active", "out of range", "from -15 to 60 deg", "-16 deg")]
    [InlineData("84 Nm", "84 N", 21, "pre_op.readings.quadriceps_torque", "unit that does not fit", "a number with Nm", "84 N")]
    [InlineData("84 Nm", "1e3 Nm", 21, "pre_op.readings.quadriceps_torque", "value", "from 0 to 400 Nm", "1e3 Nm")]
    [InlineData("84 Nm", "NaN", 21, "pre_op.readings.quadriceps_torque", "not a plain number", "a number with Nm", "NaN")]
    [InlineData("38 mA", "38", 38, "sessions[1].peak", "no unit", "a number with mA, from 0 to 1000 mA", "38")]
    [InlineData("38 mA", "-38 mA", 38, "sessions[1].peak", "out of range", "from 0 to 1000 mA", "-38 mA")]
    [InlineData("contractions: 10", "contractions: -10", 37, "sessions[1].contractions", "out of range", "a whole number from 0 to 1000 contractions", "-10")]
    [InlineData("contractions: 10", "contractions: 7.5", 37, "sessions[1].contractions", "not a whole number", "a whole number", "7.5")]
    [InlineData("7.6 x 12.7 cm", "0 x 12.7 cm", 9, "pads", "out of range", "each side from 0.1 to 50 cm", "0 x 12.7 cm")]
    [InlineData("7.6 x 12.7 cm", "7.6 x 12.7", 9, "pads", "unit", "cm or mm", "7.6 x 12.7")]
    [InlineData("effusion: 2+", "effusion: 2", 32, "assessments[2].readings.effusion", "not a grade", "none, trace, 1+, 2+, 3+", "2")]
    public void Quantities_that_are_none(string piece, string by, int line, string field, string wrong, string allowed, string found) =>
        Check(piece, by, (line, field, wrong, allowed, found));

    [Theory]
    [InlineData("flexion_active", "flexion_activ", 25, "assessments[1].readings.flexion_activ", "Did you mean \"flexion_active\"?", "the id of a measure", "flexion_activ")]
    [InlineData("flexion_active: 62 deg", "extension_lag: 10 deg", 25, "assessments[1].readings.extension_lag", "computed", "readings it is computed from", "extension_lag")]
    [InlineData("infection: no", "infecton: no", 17, "screening.answers.infecton", "Did you mean \"infection\"?", "the id of a screening item", "infecton")]
    [InlineData("infection: no", "infection: maybe", 17, "screening.answers.infection", "none of the known words", "unknown, no, yes", "maybe")]
    [InlineData("clot_signs", "clot_sings", 29, "assessments[1].signs.clot_sings", "Did you mean \"clot_signs\"?", "contraction_visible", "clot_sings")]
    [InlineData("strong-15-twice-daily", "strong-15-twice-dayly", 11, "plan.regimen", "Did you mean \"strong-15-twice-daily\"?", "strong-15-twice-daily", "strong-15-twice-dayly")]
    [InlineData("infection: no", "active-implant: no", 17, "screening.answers.active-implant", "already stands on line 16", "each field once", "active-implant")]
    [InlineData("extension_passive: 8 deg", "extension_active: 8 deg", 27, "assessments[1].readings.extension_active", "already stands on line 26", "each field once", "extension_active")]
    [InlineData("lever_arm: 33 cm", "pain_rest: 3", 32, "assessments[2].readings.lever_arm", "force says nothing without the lever arm", "from 5 to 60 cm", "")]
    [InlineData("body_mass", "bodymass", 8, "bodymass", "Did you mean \"body_mass\"?", "schema, code, born", "bodymass")]
    [InlineData("side: left", "side: lfet", 6, "operation.side", "Did you mean \"left\"?", "left, right", "lfet")]
    [InlineData("  side: left\n", "", 5, "operation.side", "missing", "required", "")]
    [InlineData("code: AB-12", "code: Mary Poppins", 2, "code", "never a name", "2 to 24 capital letters", "Mary Poppins")]
    [InlineData("case-file/1", "case-file/2", 1, "schema", "none of the known words", "case-file/1", "case-file/2")]
    public void Words_and_ids_that_are_not_known(string piece, string by, int line, string field, string wrong, string allowed, string found) =>
        Check(piece, by, (line, field, wrong, allowed, found));

    [Theory]
    [InlineData("62 deg", "{value: 70 deg, each: [60 deg, 62 deg, 64 deg]}", 25, "flexion_active.value", "not the mean of the trials", "62 deg, or left out", "70 deg")]
    [InlineData("62 deg", "{trials: 2, each: [60 deg, 62 deg, 64 deg]}", 25, "flexion_active.trials", "not the number of values", "3, or left out", "2")]
    [InlineData("62 deg", "{each: [60 deg, 62, 64 deg]}", 25, "flexion_active.each[2]", "no unit", "a number with deg, from 0 to 160 deg", "62")]
    [InlineData("62 deg", "{each: []}", 25, "flexion_active.each", "There is no trial", "1 to 20 values", "")]
    [InlineData("62 deg", "{each: [60 deg, {a: 1}]}", 25, "flexion_active.each[2]", "A single value", "one value", "a map of fields")]
    [InlineData("62 deg", "{trials: 3}", 25, "flexion_active.value", "missing", "required", "")]
    [InlineData("62 deg", "{value: 62 deg, steps: 0}", 25, "flexion_active.steps", "out of range", "a whole number from 1 to 60 steps", "0")]
    [InlineData("62 deg", "{value: 62 deg, corrected: [{was: 620 deg, on: 2026-03-06, by: KL}]}", 25, "flexion_active.corrected[1].was", "out of range", "from 0 to 160 deg", "620 deg")]
    [InlineData("62 deg", "{value: 62 deg, corrected: [{was: 26 deg, on: 2026-03-10, by: KL}]}", 25, "flexion_active.corrected[1].on", "in the future", "to 2026-03-09", "2026-03-10")]
    [InlineData("flexion_active: 62 deg", "muscle_test: {each: [3, 4]}", 25, "muscle_test.each", "Steps of a scale have no mean", "one value", "2 values")]
    public void Trials_and_corrections_that_do_not_hold(string piece, string by, int line, string field, string wrong, string allowed, string found) =>
        Check(piece, by, (line, "assessments[1].readings." + field, wrong, allowed, found));

    [Theory]
    [InlineData("comfort: 11", "comfort", "out of range", "a whole number from 0 to 10", "11")]
    [InlineData("pain_after: 3.5", "pain_after", "not a whole number", "a whole number from 0 to 10", "3.5")]
    [InlineData("adherence: 80", "adherence", "no unit", "a number with %, from 0 to 200 %", "80")]
    [InlineData("skin: red", "skin", "none of the known words", "clear, fading redness, damaged", "red")]
    [InlineData("exercises: [{exercise: quad-sets}]", "exercises[1].exercise", "Did you mean \"quad-set\"?", "brisk-walk, quad-set", "quad-sets")]
    [InlineData("exercises: [{exercise: quad-set, sets: [10, 10 x 5 kg]}]", "exercises[1].sets[2]", "not a set", "repetitions from 0 to 500, or \"done\"", "10 x 5 kg")]
    [InlineData("exercises: [{exercise: quad-set, sets: [10 @ 5]}]", "exercises[1].sets[1]", "not a set", "a number with kg, from 0 to 300 kg", "10 @ 5")]
    [InlineData("exercises: [{exercise: quad-set, sets: [10], time: 5 min}]", "exercises[1].time", "in sets or by the clock", "sets or time, not both", "both")]
    [InlineData("exercises: [{exercise: brisk-walk, time: 5 h}]", "exercises[1].time", "out of range", "to 14400 s", "5 h")]
    public void Sessions_that_cannot_be(string by, string field, string wrong, string allowed, string found) =>
        Check("peak: 38 mA", by, (38, "sessions[1]." + field, wrong, allowed, found));

    [Fact]
    public void Pain_of_a_morning_that_has_not_come_is_refused()
    {
        FileProblem problem = CaseText.OnlyProblem("  - date: 2026-03-06\n    contractions", "  - date: 2026-03-09\n    pain_next_morning: 3\n    contractions");

        Assert.Equal(("sessions[1].pain_next_morning", "The morning after this session has not come yet.", "3"), (problem.Field, problem.Wrong, problem.Found));
    }

    [Theory]
    [InlineData("infection", "No clearance lifts this item.")]
    [InlineData("active-implant", "There is nothing to clear where the answer is no.")]
    public void A_clearance_that_does_not_belong_is_refused(string item, string wrong)
    {
        FileProblem problem = CaseText.OnlyProblem(
            $"{item}: no", $"{item}: {{answer: no, clearance: {{by: KL, on: 2026-03-05, text: Go}}}}");

        Assert.Equal((wrong, $"screening.answers.{item}.clearance"), (problem.Wrong, problem.Field));
    }

    [Theory]
    [InlineData("Knee replacement", "\"Knee\\e[2J replacement\"", "U+001B")]
    [InlineData("Knee replacement", "Knee \u001b[2J replacement", "U+001B")]
    [InlineData("Knee replacement", "Knee \u202ereplacement", "U+202E, which changes the direction of writing")]
    [InlineData("Knee replacement", "\"Knee \\u2066replacement\"", "U+2066, which changes the direction of writing")]
    [InlineData("Knee replacement", "Knee \u009b31m replacement", "U+009B")]
    public void Hidden_characters_are_named_with_their_line(string piece, string by, string found)
    {
        FileProblem problem = CaseText.OnlyProblem(piece, by);

        Assert.Equal((7, found, "visible characters, spaces, tabs and line ends"), (problem.Line, problem.Found, problem.Allowed));
    }

    [Fact]
    public void A_file_cut_short_anywhere_never_gives_a_part_of_the_case_without_the_required_fields()
    {
        int required = CaseText.Good.IndexOf("procedure: K", StringComparison.Ordinal) + "procedure: K".Length;
        for (int length = 0; length < required; length++)
        {
            CaseFileResult result = CaseText.Read(CaseText.Good[..length]);

            Assert.Null(result.Case);
            Assert.NotEmpty(result.Problems);
        }
    }

    [Fact]
    public void A_truncated_file_says_where_it_breaks_off()
    {
        FileProblem problem = Assert.Single(CaseText.Read("schema: case-file/1\ncode: \"AB-").Problems);

        Assert.Equal((2, "code: \"AB-"), (problem.Line, problem.Found));
        Assert.Contains("cut short", problem.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_binary_file_is_refused()
    {
        CaseFileResult result = CaseFileReader.Read("case.yaml", [0x7F, 0x45, 0x4C, 0x46, 0x02, 0x00, 0x01], SmallLibrary.Value, CaseText.Today);

        Assert.Equal("case.yaml:1: This is not a text file: it holds a zero byte. Allowed: UTF-8 text. Found: \"binary data\".", Assert.Single(result.Problems).ToString());
    }

    [Fact]
    public void No_damaged_case_makes_the_reader_fail()
    {
        Bogus.Randomizer random = new(7);
        byte[] good = Encoding.UTF8.GetBytes(CaseText.Good);
        for (int round = 0; round < 1000; round++)
        {
            byte[] bytes = [.. good];
            for (int change = random.Int(1, 4); change > 0; change--)
            {
                bytes[random.Int(0, bytes.Length - 1)] = (byte)random.Int(0x20, 0x7E);
            }

            CaseFileResult result = CaseFileReader.Read("case.yaml", bytes, SmallLibrary.Value, CaseText.Today);

            Assert.Equal(result.Case is null, result.Problems.Length > 0);
        }
    }

    [Fact]
    public void A_wrong_day_of_operation_is_told_alone()
    {
        string text = CaseText.Good.Replace("date: 2026-03-02", "date: 2027-03-02", StringComparison.Ordinal)
            .Replace("weeks: 6", "from: 2026-03-05", StringComparison.Ordinal);
        Assert.Equal("operation.date", Assert.Single(CaseText.Read(text).Problems).Field);
    }

    private static void Check(string piece, string by, (int Line, string Field, string Wrong, string Allowed, string Found) expected)
    {
        FileProblem problem = CaseText.OnlyProblem(piece, by);

        Assert.Equal(("case.yaml", expected.Line, expected.Field, expected.Found), (problem.File, problem.Line, problem.Field, problem.Found));
        Assert.Contains(expected.Wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.Contains(expected.Allowed, problem.Allowed, StringComparison.Ordinal);
    }
}
