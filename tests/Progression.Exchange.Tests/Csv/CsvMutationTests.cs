using System.Diagnostics;
using System.Text;
using Bogus;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;
using Progression.Records.Cases;
using Progression.Records.Plans;

namespace Progression.Exchange.Tests.Csv;

/// <summary>5,000 spoiled files of each kind, seed fixed: always an answer, never half a case.</summary>
public sealed class CsvMutationTests
{
    private const int Files = 5_000;

    private static readonly PlanRevision Plan = SomePlan.Of().Stim(2, "mon wed fri").Exercise(2, "daily").Target(3, 90);

    private static readonly string[] Strange =
        ["", ",", ";", "\t", "\"", "\"\"", "\r", "\n", "\r\n", "=", "-", "'", "1,5", "1.5", "99999999999999999999", "-1", "NaN", "2026-02-30", "9999-12-31", "0001-01-01", "13/13/2026", "\uFEFF", "\u202E", "膝", "code", "flexion_active"];

    [Theory]
    [InlineData(CsvContent.Measures)]
    [InlineData(CsvContent.Sessions)]
    [InlineData(CsvContent.Plan)]
    public void A_spoiled_file_is_taken_whole_or_refused_with_a_reason(CsvContent content)
    {
        Randomizer random = new(20_261_125);
        Case[] cases = [.. InventedKnees.Some(5, 40)];
        Stopwatch longest = new();
        (int taken, int refused) = (0, 0);
        for (int n = 0; n < Files; n++)
        {
            Case patient = cases[n % cases.Length];
            byte[] bytes = Spoiled(Encoding.UTF8.GetBytes(Table(content, patient)), random);
            longest.Start();
            ImportResult result = CsvImport.Read(bytes, content, new ImportGround(SomeKnee.Patient, SomeKnee.Library, SomeKnee.Today) { Plan = Plan }, _ => CsvChoices.None).Result;
            longest.Stop();
            Judge(result);
            (taken, refused) = (taken + (result.IsGood ? 1 : 0), refused + (result.Problems.IsEmpty ? 0 : 1));
        }

        // Both ends are met, so that the test could fail either way.
        Assert.True(taken > 20 && refused > 1_000, $"{taken} taken, {refused} refused");
        TestContext.Current.TestOutputHelper?.WriteLine($"{content}: {taken} taken, {refused} refused, {longest.Elapsed.TotalMilliseconds / Files:0.00} ms a file");
    }

    private static string Table(CsvContent content, Case patient) => content switch
    {
        CsvContent.Measures => MeasuresCsv.Of(patient, SomeKnee.Library),
        CsvContent.Sessions => SessionsCsv.Of(patient),
        _ => PlanCsv.Of(Plan.Stim(3, "daily", 2).Target(2, 80), SomeKnee.Library),
    };

    private static void Judge(ImportResult result)
    {
        Assert.False(result.IsGood && result.Problems.Length > 0);
        if (result.Plan is { } plan)
        {
            Assert.Equal(result.Coming, plan.Cells.Count(cell => cell.Value.IsPinned));
            Assert.NotNull(PlanJson.Read(PlanJson.Write(plan)));
        }

        Assert.All(result.Problems, problem => Assert.True(problem.Wrong.Length > 0 && problem.Allowed.Length > 0));
        Assert.NotEmpty(ImportPreview.Lines(result, "KNEE-1"));
        if (result.Case is not { } now)
        {
            return;
        }

        // Everything that the preview says comes in is there, and what stood there before is there still.
        int readings = Count(now) - Count(SomeKnee.Patient);
        int sessions = now.Sessions.Length - SomeKnee.Patient.Sessions.Length;
        Assert.Equal(result.Coming, readings + sessions);
        Assert.All(SomeKnee.Patient.Assessments, visit => Assert.All(visit.Readings, reading => Assert.Equal(reading.Value, now.AssessmentOf(visit.Date)!.Readings[reading.Key])));
        Assert.Equal(now.Assessments.Select(visit => visit.Date).Distinct().Order(), now.Assessments.Select(visit => visit.Date));
        Assert.NotNull(CaseJson.Read(CaseJson.Write(now)));
    }

    private static int Count(Case patient) => patient.Assessments.Sum(visit => visit.Readings.Count) + (patient.PreOp?.Readings.Count ?? 0);

    private static byte[] Spoiled(byte[] bytes, Randomizer random)
    {
        List<byte> changed = [.. bytes];
        for (int times = random.Int(1, 4); times > 0 && changed.Count > 0; times--)
        {
            int at = random.Int(0, changed.Count - 1);
            switch (random.Int(0, 5))
            {
                case 0:
                    changed[at] = random.Byte();
                    break;
                case 1:
                    changed.RemoveRange(at, Math.Min(random.Int(1, 20), changed.Count - at));
                    break;
                case 2:
                    changed.InsertRange(at, Encoding.UTF8.GetBytes(random.ArrayElement(Strange)));
                    break;
                case 3:
                    changed.RemoveRange(at, changed.Count - at);
                    break;
                case 4:
                    changed.InsertRange(random.Int(0, changed.Count - 1), [.. changed.Skip(at).Take(random.Int(1, 80))]);
                    break;
                default:
                    changed[at] = (byte)(changed[at] ^ (1 << random.Int(0, 7)));
                    break;
            }
        }

        return [.. changed];
    }
}
