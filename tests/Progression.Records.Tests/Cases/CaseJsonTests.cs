using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;

namespace Progression.Records.Tests.Cases;

public sealed class CaseJsonTests
{
    [Fact]
    public void What_is_stored_is_read_back_as_the_same_case()
    {
        foreach (Case written in InventedCases.Some(seed: 3, count: 150))
        {
            string json = CaseJson.Write(written);

            Assert.Equal(json, CaseJson.Write(CaseJson.Read(json)));
            Assert.Equal(CaseFileWriter.Write(written, SmallLibrary.Value), CaseFileWriter.Write(CaseJson.Read(json), SmallLibrary.Value));
        }
    }

    [Fact]
    public void Names_stand_in_ordinal_order_with_units_and_without_white_space()
    {
        Case written = CaseText.Read("""
            schema: case-file/1
            code: AB-12
            operation: {date: 2026-03-02, side: right, procedure: "Knee \"total\" µ"}
            body_mass: 82.5 kg
            pads: round 7 cm
            pre_op: {date: 2026-02-16, readings: {quadriceps_torque: 84 Nm}, signs: {clot_signs: no}}
            """).Case!;

        Assert.Equal(
            """{"body_mass_kg":82.5,"code":"AB-12","operation":{"date":"2026-03-02","procedure":"Knee \"total\" µ","side":"right"},"other_knee":"not known","pads":{"width_cm":7},"plan":{},"pre_op":{"date":"2026-02-16","readings":{"quadriceps_torque":{"value":84}},"signs":{"clot_signs":"no"}},"schema":"case/1","screening":{"answers":{}},"surgeon":{}}""",
            CaseJson.Write(written));
    }

    // A case as it was stored before trials, corrections, whole sessions and flag notes were kept.
    [Fact]
    public void A_case_stored_before_the_newer_fields_is_still_read()
    {
        const string old = """{"assessments":[{"date":"2026-03-06","readings":{"pain_rest":{"trials":1,"value":3}},"signs":{}}],"code":"AB-12","operation":{"date":"2026-03-02","procedure":"Knee replacement","side":"right"},"other_knee":"not known","plan":{},"schema":"case/1","screening":{"answers":{}},"sessions":[{"contractions":10,"date":"2026-03-06","peak_mA":38}],"surgeon":{}}""";

        Case read = CaseJson.Read(old);

        Reading pain = read.Assessments[0].Readings[MeasureIds.PainRest];
        Assert.Equal((3, 1, null, true, true), (pain.Value, pain.Trials, pain.Rater, pain.Each.IsEmpty, pain.Corrected.IsEmpty));
        SessionLog session = read.Sessions[0];
        Assert.Equal((10, 38, null, null, true), (session.Contractions, session.Peak!.Milliamperes, session.PainBefore, session.Skin, session.Exercises.IsEmpty));
        Assert.Equal((null, true), (read.DeficitWritten, read.FlagNotes.IsEmpty));
        Assert.Equal(old, CaseJson.Write(read));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"schema\":\"case/2\",\"operation\":{},\"surgeon\":{},\"plan\":{}}")]
    [InlineData("{\"schema\":7}")]
    public void Any_other_text_is_refused(string json) => Assert.Throws<FormatException>(() => CaseJson.Read(json));

    [Fact]
    public void A_stored_case_with_a_spoilt_field_is_refused_not_half_read()
    {
        string json = CaseJson.Write(CaseText.Read(CaseText.Good).Case!);

        Assert.Throws<FormatException>(() => CaseJson.Read(json.Replace("2026-03-02", "2026-13-02", StringComparison.Ordinal)));
        Assert.Throws<FormatException>(() => CaseJson.Read(json.Replace("\"left\"", "\"both\"", StringComparison.Ordinal)));
        Assert.Throws<FormatException>(() => CaseJson.Read(json.Replace("\"body_mass_kg\":82", "\"body_mass_kg\":8200", StringComparison.Ordinal)));
    }
}
