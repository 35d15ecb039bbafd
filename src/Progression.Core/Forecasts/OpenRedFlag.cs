using Progression.Core.Library;
using Progression.Core.Rules;

namespace Progression.Core.Forecasts;

/// <summary>Whether a red flag is open, which withholds every forecast.</summary>
internal static class OpenRedFlag
{
    /// <summary>Whether one is raised at the latest assessment.</summary>
    internal static bool Any(ForecastReadings readings, ClinicalLibrary library)
    {
        if (readings.States.IsEmpty)
        {
            return false;
        }

        LadderFacts facts = new(readings.Case, library, readings.States, Rung.HighVolume, readings.States[0].Date);
        return LadderRules.Refer.Apply(facts).Truth == Truth.Holds || LadderRules.ReferStiff.Apply(facts).Truth == Truth.Holds;
    }
}
