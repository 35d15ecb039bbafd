using System.Collections.Immutable;
using Progression.Core.Clinic;
using Progression.Records.Audit;

namespace Progression.App.Papers;

/// <summary>Something about one case that can leave the workbook. Its command and the screen of papers are made from the same entry.</summary>
public sealed record Paper
{
    /// <summary>Its name: "home sheet". With dashes it is part of the names of its files.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for, in a few words.</summary>
    public required string Explains { get; init; }

    /// <summary>What it can be written as; the first is the usual one.</summary>
    public required ImmutableArray<PaperFormat> Formats { get; init; }

    /// <summary>Makes it. It may be asked only for one of its formats.</summary>
    public required Func<PaperOrder, PaperFormat, PaperMade> Make { get; init; }

    /// <summary>Whether it is about one week, which is then part of the names of its files.</summary>
    public bool IsOfAWeek { get; init; }

    /// <summary>Whether it is about one measure, which is then part of the names of its files.</summary>
    public bool IsOfAMeasure { get; init; }

    /// <summary>Whether it is for another program, and not for a person to read.</summary>
    public bool IsExport { get; init; }

    /// <summary>What is written down beside its name when it was made; empty for nothing.</summary>
    public Func<PaperOrder, string> Beside { get; init; } = _ => "";

    /// <summary>What a person must be allowed to do to have it.</summary>
    public ClinicAct Act => IsExport ? ClinicAct.ExportCase : ClinicAct.PrintPlan;

    /// <summary>What is written down about it.</summary>
    public AuditAct Noted => IsExport ? AuditAct.Exported : AuditAct.Printed;

    /// <summary>The usual name of its file: code, paper, measure, week and ending; never a person's name.</summary>
    public string FileName(PaperOrder order, PaperFormat format)
    {
        ArgumentNullException.ThrowIfNull(order);
        string week = IsOfAWeek ? FormattableString.Invariant($"-week-{order.Week}") : "";
        string measure = IsOfAMeasure && order.Measure is { } id ? $"-{id.Replace('_', '-')}" : "";
        return $"{order.Patient.Code.Text}-{Name.Replace(' ', '-')}{measure}{week}{PaperFormats.Ending(format)}";
    }
}
