using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Tests.Measures;

/// <summary>A visit in the making with readings and their circumstances.</summary>
internal sealed record Visit(Assessment Assessment)
{
    internal static Visit On(int day, string? rater = null) => new(Look.Empty.On(day) with { Rater = rater });

    internal static Visit With(int day, string measure, double value) => On(day).With(measure, value);

    internal Visit With(string measure, double value) => With(new Reading(measure, value));

    internal Visit With(Reading reading) => this with { Assessment = Assessment with { Readings = Assessment.Readings.SetItem(reading.Measure, reading) } };

    internal KneeState State(Knee? knee = null) => KneeState.At(Assessment, (knee ?? Knee.Well).Case);

    /// <summary>A measure at one visit and at another three weeks later.</summary>
    internal static Change Change(string measure, double old, double now, ClinicalLibrary? library = null) =>
        Changes.Between(With(7, measure, old).State(), With(28, measure, now).State(), measure, library ?? Knee.Library)!;

    /// <summary>A measure at visits a week apart: the last change.</summary>
    internal static Change? Last(string measure, params double[] values) =>
        Changes.FromLast([.. values.Select((value, place) => With(7 * (place + 1), measure, value).State())], measure, Knee.Library);

    /// <summary>The shipped library with one measure altered.</summary>
    internal static ClinicalLibrary Library(string measure, Func<Measure, Measure> altered, double? level = null)
    {
        ClinicalLibrary library = level is double percent ? Knee.LibraryWith(LimitIds.ChangeLevel, percent) : Knee.Library;
        return library with { Measures = library.Measures.SetItem(measure, altered(library.Measures[measure])) };
    }
}
