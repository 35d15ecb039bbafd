using Progression.App.Caseload;
using Progression.App.Compare;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.App.Start;
using Progression.App.Tests.Compare;
using Progression.App.Tests.Grid;
using Progression.App.Tests.Start;
using Progression.Core.Caseload;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Plans;

namespace Progression.App.Tests.Pictures;

/// <summary>Without any colour every two states differ at the very cell in which they stand, in Unicode and in seven bits.</summary>
public sealed class MonochromePairsTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 200, 60 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Severities_differ_in_the_cell_of_the_grid(int width, int height) => Differ(
        from severity in Enum.GetValues<Severity>().Select(one => (Severity?)one).Append(null)
        let bare = Sample.At(Sample.State, "walking", 2) with { Findings = [] }
        let state = severity is { } known ? bare with { Findings = [Of(known)] } : bare
        select ($"{severity}", Cells(GridScreen.Definition.Draw(state, new(width, height)), "walking")));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Rungs_differ_in_the_cell_of_the_grid(int width, int height)
    {
        StimCell dose = Assert.IsType<StimCell>(Sample.State.Plan.ContentAt(Lanes.Stim, 3));
        Differ(
            from rung in Enum.GetValues<Rung>()
            let plan = PlanEdit.Set(Sample.State.Plan, new(Lanes.Stim, 4), dose with { Rung = rung })
            select ($"{rung}", Cells(GridScreen.Definition.Draw(Sample.At(Sample.State.WithPlan(plan), Lanes.Stim, 2), new(width, height)), Lanes.Stim)));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Classes_of_change_differ_in_the_row_of_the_comparison(int width, int height) => Differ(
        from kind in Enum.GetValues<ChangeClass>().Select(one => ((ChangeClass?)one, false)).Append((ChangeClass.NoDetectableChange, true)).Append((null, false))
        let state = SampleComparison.State with { Comparison = With(kind.Item1, kind.Item2) }
        select ($"{kind}", Row(CompareScreen.Definition.Draw(state.To(2), new(width, height)), "lexion")));

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Letters_of_the_list_differ_in_the_line_of_the_case(int width, int height)
    {
        CaseLine bare = SampleStart.Demo.Cases[0] with { HasDraft = false, Standing = new CaseStanding { Week = 3 } };
        CaseLine other = SampleStart.Demo.Cases[1];
        Differ(
            from mark in Enum.GetValues<CaseMark>().Select(one => (CaseMark?)one).Append(null)
            let line = mark is { } known ? With(bare, known) : bare
            // The cursor stands on another line, so that nothing is read off the sentence below the list.
            let state = SampleStart.Demo with { Cases = [line, other], Choice = CaseChoice.Everything }
            select ($"{mark}", Row(StartScreen.Definition.Draw(state.On(other.Code), new(width, height)), line.Code.Text)));
    }

    private static Finding Of(Severity severity) => new()
    {
        Rule = "LOAD-02",
        Severity = severity,
        Text = "Invented.",
        Source = new Source("Invented for the tests", Standing.CommonPractice),
        Cells = [new("walking", 4)],
    };

    private static CaseLine With(CaseLine bare, CaseMark mark) => mark switch
    {
        CaseMark.Due => bare with { Standing = bare.Standing! with { IsDue = true } },
        CaseMark.Behind => bare with { Standing = bare.Standing! with { Behind = [new BehindGoal(SampleComparison.Flexion, 70, 90, 16)] } },
        CaseMark.Unsigned => bare with { Standing = bare.Standing! with { IsUnsigned = true } },
        CaseMark.Blocked => bare with { Standing = bare.Standing! with { Blocked = ["Invented."] } },
        _ => bare with { HasDraft = true },
    };

    private static Comparison With(ChangeClass? kind, bool possibly)
    {
        ComparisonRow row = SampleComparison.Comparison.Rows[0];
        Change change = row.Last! with { Class = kind, PossiblyWorse = possibly, WhyNot = kind is null ? "Invented." : null };
        return SampleComparison.Comparison with { Rows = SampleComparison.Comparison.Rows.SetItem(0, row with { Last = change, SinceFirst = null }) };
    }

    private static string Row(Picture picture, string title) => picture.Rows.Skip(1).Select(row => row.Text).First(text => text.Contains(title, StringComparison.Ordinal));

    // A cell may take two lines.
    private static string Cells(Picture picture, string id)
    {
        Lane lane = Sample.State.Plan.LaneOf(id)!;
        string[] rows = [.. picture.Rows.Skip(1).Select(row => row.Text)];
        int at = Array.FindIndex(rows, text => (text.StartsWith(lane.Title, StringComparison.Ordinal) || text.StartsWith(lane.Short, StringComparison.Ordinal)) && text.Contains('│', StringComparison.Ordinal));
        return string.Join('\n', rows[at..(at + 2)]);
    }

    private static void Differ(IEnumerable<(string State, string Shown)> states)
    {
        (string State, string Shown)[] all = [.. states];
        Assert.True(all.Length > 2);
        for (int one = 0; one < all.Length; one++)
        {
            for (int other = one + 1; other < all.Length; other++)
            {
                Assert.True(all[one].Shown != all[other].Shown, $"{all[one].State} and {all[other].State}: {all[one].Shown}");
                Assert.True(SevenBit.Of(all[one].Shown) != SevenBit.Of(all[other].Shown), $"{all[one].State} and {all[other].State} in seven bits: {all[one].Shown}");
            }
        }
    }
}
