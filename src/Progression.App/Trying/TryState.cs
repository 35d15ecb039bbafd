using System.Collections.Immutable;
using Progression.App.Assess;
using Progression.App.Forms;
using Progression.App.Grid;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

namespace Progression.App.Trying;

/// <summary>A scratch copy of a case and its plan: readings of the latest assessment are typed over, and the grid moves with them. Nothing of it is kept.</summary>
public sealed record TryState
{
    private const string Group = "Latest assessment";

    /// <summary>What can be tried even where it was not measured.</summary>
    private static readonly ImmutableArray<string> Usual =
        [MeasureIds.FlexionActive, MeasureIds.ExtensionActive, MeasureIds.ExtensionPassive, MeasureIds.QuadricepsTorque, MeasureIds.Effusion, MeasureIds.PainActivity];

    private TryState()
    {
    }

    /// <summary>The grid as it stood when the try-out began.</summary>
    public required GridState Before { get; init; }

    /// <summary>The plan that readings are tried on: the one that stands, with the doses changed by hand in the scratch grid.</summary>
    public required PlanRevision Base { get; init; }

    /// <summary>The grid as it would be.</summary>
    public required GridState Grid { get; init; }

    /// <summary>A line for each reading that can be tried.</summary>
    public required Form Form { get; init; }

    /// <summary>What the keys mean.</summary>
    public TryMode Mode { get; init; }

    /// <summary>Lines of the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The case as it is.</summary>
    public Case Original => Before.Desk.Case;

    /// <summary>The clinical library.</summary>
    public ClinicalLibrary Library => Before.Desk.Library;

    /// <summary>A try-out that begins on a grid; null when the case has no assessment whose readings could be tried.</summary>
    public static TryState? Open(GridState grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        if (grid.Desk.Case.Assessments.IsEmpty)
        {
            return null;
        }

        GridState scratch = grid with { IsScratch = true, Mode = GridMode.Grid, Saved = grid.Plan, Offers = [], Done = [], Undone = [], Status = "" };
        return new TryState { Before = scratch, Base = grid.Plan, Grid = scratch, Form = Form.Of([.. Lines(grid.Desk)]) };
    }

    /// <summary>The state with another form, and the grid that follows from it; what cannot be read yet leaves the grid as it was.</summary>
    public TryState With(Form form)
    {
        ArgumentNullException.ThrowIfNull(form);
        TryState next = this with { Form = form, Status = "" };
        return form.Lines.All(line => Wrong(line) is null) ? next.Redone() : next;
    }

    /// <summary>The state after doses were changed by hand in the scratch grid.</summary>
    public TryState WithDoses(PlanRevision plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return this with { Base = plan, Grid = Grid.WithPlan(plan) with { Saved = plan } };
    }

    /// <summary>Everything as it is.</summary>
    public TryState Reset() => this with
    {
        Base = Before.Plan,
        Grid = Before,
        Form = Form.With(line => line with { Entry = Actions.LineEntry.Of(line.Given) }),
        Status = "Everything is as it was measured.",
    };

    /// <summary>What is wrong with a line; null when nothing is. An empty line is "not measured".</summary>
    public Problem? Wrong(FormLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Text.Length == 0 ? null : Entry(line.Id).Read(line.Title, line.Text).Problems.FirstOrDefault();
    }

    private TryState Redone()
    {
        ImmutableDictionary<string, double?> tried = Form.Lines.Where(line => line.IsTouched)
            .ToImmutableDictionary(line => line.Id, Value);
        if (tried.IsEmpty)
        {
            return this with { Grid = Moved(Original, Base) };
        }

        Entered<WhatIf> what = WhatIf.With(Base, Original, Library, tried);
        return what.Value is { } scratch
            ? this with { Grid = Moved(scratch.Patient, scratch.Plan) }
            : this with { Status = what.Problems[0].Wrong };
    }

    private MeasureEntry Entry(string measure) => new(Library.Measures[measure], Original.DeficitWritten);

    /// <summary>The value of a line, the mean of its trials; null for not measured.</summary>
    private double? Value(FormLine line) => line.Text.Length == 0 ? null : Entry(line.Id).Read(line.Title, line.Text).Value?.Value.Average();

    /// <summary>The grid of a scratch case and plan, the cursor where it was.</summary>
    private GridState Moved(Case patient, PlanRevision plan)
    {
        PlanDesk desk = PlanDesk.For(patient, Library, Before.Desk.Today);
        return (Grid with { Desk = desk }).WithPlan(plan) with { Saved = plan };
    }

    private static IEnumerable<FormLine> Lines(PlanDesk desk)
    {
        Assessment latest = desk.Case.Assessments[^1];
        DeficitSign? sign = desk.Case.DeficitWritten;
        HashSet<string> tried = [.. latest.Readings.Keys.Union(Usual)];
        return AssessLines.Labelled(Form.Of(AssessLines.Of(desk.Library)), sign).Lines.Where(line => !line.IsShownOnly && tried.Contains(line.Id))
            .Select(line => line with
            {
                Group = Group,
                Given = latest.Value(line.Id) is double value ? new MeasureEntry(desk.Library.Measures[line.Id], sign).Write(value) : "",
            });
    }
}
