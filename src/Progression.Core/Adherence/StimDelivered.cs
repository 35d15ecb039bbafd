using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Adherence;

/// <summary>The stim a person got, as far as it is logged; what nobody logged is not in it.</summary>
/// <param name="Sessions">Logged sessions with stim.</param>
/// <param name="Contractions">Stimulated contractions in them.</param>
/// <param name="Minutes">Their minutes by the clock, reckoned from the regimen's on-time, rest and ramps, the last rest counted; null when the regimen leaves them open.</param>
public sealed record StimDelivered(int Sessions, int Contractions, double? Minutes)
{
    /// <summary>What was delivered to a case up to and with a day; null when no session at all is logged by then: then it is not known, not zero.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="regimen">The regimen of its plan; null when not known.</param>
    /// <param name="until">The last day counted.</param>
    public static StimDelivered? Of(Case patient, Regimen? regimen, DateOnly until)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ImmutableArray<SessionLog> logs = [.. patient.Sessions.Where(log => log.Date <= until)];
        int contractions = logs.Sum(log => log.Contractions);
        return logs.IsEmpty ? null : new StimDelivered(logs.Count(log => log.Contractions > 0), contractions, PlanFigures.SessionSeconds(regimen, contractions) / 60);
    }
}
