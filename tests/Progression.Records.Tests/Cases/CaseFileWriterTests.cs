using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;

namespace Progression.Records.Tests.Cases;

public sealed class CaseFileWriterTests
{
    [Fact]
    public void What_is_written_is_read_back_as_the_same_case()
    {
        foreach (Case written in InventedCases.Some(seed: 20261125, count: 150))
        {
            CaseFileResult read = CaseText.Read(CaseFileWriter.Write(written, SmallLibrary.Value));

            Assert.Empty(read.Problems);
            Assert.Equal(CaseJson.Write(written), CaseJson.Write(read.Case!));
        }
    }

    [Fact]
    public void Writes_a_line_a_field_and_leaves_out_what_is_not_known()
    {
        Case written = CaseText.Read("""
            schema: case-file/1
            code: AB-12
            operation: {date: 2026-03-02, side: right, procedure: Knee replacement}
            assessments:
              - date: 2026-03-05
                readings: {flexion_active: 62.5°, quadriceps_torque: {value: 30 N m, trials: 3}}
            """).Case!;

        Assert.Equal(
            """
            schema: case-file/1
            code: "AB-12"
            operation:
              date: 2026-03-02
              side: right
              procedure: "Knee replacement"
            other_knee: not known
            assessments:
              - date: 2026-03-05
                readings:
                  flexion_active: 62.5 deg
                  quadriceps_torque:
                    value: 30 Nm
                    trials: 3

            """,
            CaseFileWriter.Write(written, SmallLibrary.Value));
    }

    [Fact]
    public void A_text_with_hidden_characters_is_written_harmless_and_stays_readable()
    {
        Case written = CaseText.Read(CaseText.Good).Case! with { Therapist = "K\u001b[2J\nL\u202e" };

        Assert.Equal("K\uFFFD[2J\uFFFDL\uFFFD", CaseText.Read(CaseFileWriter.Write(written, SmallLibrary.Value)).Case!.Therapist);
    }

    [Fact]
    public void Every_digit_of_a_mean_is_kept()
    {
        Case good = CaseText.Read(CaseText.Good).Case!;
        ImmutableSortedDictionary<string, Reading> mean = good.PreOp!.Readings.SetItem(MeasureIds.QuadricepsTorque, new Reading(MeasureIds.QuadricepsTorque, 62.3333333333333));

        Case read = CaseText.Read(CaseFileWriter.Write(good with { PreOp = good.PreOp with { Readings = mean } }, SmallLibrary.Value)).Case!;

        Assert.Equal(62.3333333333333, read.PreOp!.Value(MeasureIds.QuadricepsTorque));
    }
}
