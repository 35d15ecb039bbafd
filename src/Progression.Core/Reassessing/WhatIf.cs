using System.Collections.Immutable;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Reassessing;

/// <summary>A scratch copy of a case and its plan in which a reading or a dose is another one. Nothing of it is kept.</summary>
public sealed record WhatIf
{
    private WhatIf()
    {
    }

    /// <summary>The case as altered.</summary>
    public required Case Patient { get; init; }

    /// <summary>The plan as it would be drafted over the standing one.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The latest assessment with another value of a measure, and the plan that would follow; or what stands in its way.</summary>
    /// <param name="standing">The plan that stands, or the plan of an earlier scratch copy.</param>
    /// <param name="patient">The case.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="measure">The id of the measure; the extension lag changes active extension and leaves the passive one.</param>
    /// <param name="value">The value in the measure's unit; null for not measured.</param>
    public static Entered<WhatIf> With(PlanRevision standing, Case patient, ClinicalLibrary library, string measure, double? value) =>
        With(standing, patient, library, new Dictionary<string, double?> { [measure] = value });

    /// <summary>The same with several readings at once.</summary>
    /// <param name="standing">As for one.</param>
    /// <param name="patient">As for one.</param>
    /// <param name="library">As for one.</param>
    /// <param name="values">The values by the ids of their measures; null for not measured.</param>
    public static Entered<WhatIf> With(PlanRevision standing, Case patient, ClinicalLibrary library, IReadOnlyDictionary<string, double?> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (patient.Assessments.IsEmpty)
        {
            return Entered<WhatIf>.Bad(new Problem(string.Join(", ", values.Keys), "There is no assessment to change.", "at least one assessment since the operation", ""));
        }

        Case altered = patient;
        foreach ((string measure, double? value) in values.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            (string reading, double? amount) = Entry(altered, measure, value);
            if (Problem(library, (measure, reading), amount) is { } problem)
            {
                return Entered<WhatIf>.Bad(problem);
            }

            altered = Altered(altered, reading, amount);
        }

        Entered<PlanRevision> plan = Redraft.Of(standing, altered, library, new DraftOrder { Weeks = standing.Weeks, Regimen = standing.Regimen });
        return plan.Value is null ? Entered<WhatIf>.Bad(plan.Problems) : Entered<WhatIf>.Good(new WhatIf { Patient = altered, Plan = plan.Value });
    }

    /// <summary>The same with another content of a cell, set as by hand, so that it stays when a reading is changed after it.</summary>
    /// <exception cref="ArgumentException">The cell cannot be edited.</exception>
    public WhatIf Put(CellAddress address, CellContent? content) => this with { Plan = PlanEdit.Set(Plan, address, content) };

    /// <summary>A scratch copy in which nothing is changed yet.</summary>
    public static WhatIf Unchanged(PlanRevision standing, Case patient) => new() { Patient = patient, Plan = standing };

    /// <summary>The reading behind what was asked for: the lag is made by the active deficit of the same visit.</summary>
    private static (string Reading, double? Value) Entry(Case patient, string measure, double? value) =>
        measure == MeasureIds.Lag && patient.Assessments[^1].Value(MeasureIds.ExtensionPassive) is double passive
            ? (MeasureIds.ExtensionActive, value + passive)
            : (measure, value);

    private static Problem? Problem(ClinicalLibrary library, (string Asked, string Reading) measure, double? value)
    {
        if (measure.Reading is MeasureIds.Lag)
        {
            return new Problem(measure.Asked, "The lag cannot be tried without the passive extension deficit of the same visit.", MeasureIds.ExtensionPassive, "not measured");
        }

        if (!library.Measures.TryGetValue(measure.Reading, out Measure? known) || MeasureIds.Computed.Contains(measure.Reading))
        {
            return new Problem(measure.Asked, "This is not a reading that can be entered.", string.Join(", ", library.Measures.Keys.Except(MeasureIds.Computed)), Found.Of(measure.Asked));
        }

        return value is double number && (number < known.Least || number > known.Most || (known.Whole && number != Math.Floor(number)))
            ? new Problem(measure.Asked, "The value cannot be entered.", $"{(known.Whole ? "a whole number from " : "")}{Number.Text(known.Least)} to {Number.Text(known.Most)} {known.Unit}".TrimEnd(), Number.Text(number))
            : null;
    }

    private static Case Altered(Case patient, string measure, double? value)
    {
        Assessment latest = patient.Assessments[^1];
        ImmutableSortedDictionary<string, Reading> readings = value is not double number ? latest.Readings.Remove(measure)
            : latest.Readings.SetItem(measure, (latest.Readings.GetValueOrDefault(measure) ?? new Reading(measure, number)) with { Value = number, Trials = null, Each = [] });
        return patient with { Assessments = patient.Assessments.SetItem(patient.Assessments.Length - 1, latest with { Readings = readings }) };
    }
}
