using System.Globalization;
using Progression.Core.People;

namespace Progression.App.Pictures;

/// <summary>How a case and a day are named on a screen.</summary>
public static class CaseTitle
{
    /// <summary>"K-014  right knee, operated 2 Nov 2026".</summary>
    public static string Of(Case patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return $"{patient.Code}  {(patient.Operation.Side == Side.Left ? "left" : "right")} knee, operated {Day(patient.Operation.Date)}";
    }

    /// <summary>"2 Nov 2026".</summary>
    public static string Day(DateOnly date) => date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"2 Nov", where the year is plain from what stands around.</summary>
    public static string ShortDay(DateOnly date) => date.ToString("d MMM", CultureInfo.InvariantCulture);
}
