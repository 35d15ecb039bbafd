using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>Conditions that end familiarising; they read the session log.</summary>
internal static class FamiliariseConditions
{
    /// <summary>A strong full contraction was tolerated.</summary>
    internal static Judged Strong(LadderFacts facts)
    {
        List<SessionLog> asked = [.. facts.Sessions.Where(log => log.StrongContractionTolerated is not null)];
        bool? tolerated = asked.Count == 0 ? null : asked.Any(log => log.StrongContractionTolerated == true);
        return new Judged("a strong full contraction is tolerated", Truths.From(tolerated),
            [new Input("Sessions in which it was asked", asked.Count == 0 ? "none" : $"{asked.Count}")])
        {
            Missing = tolerated is null ? "log whether a strong full contraction is tolerated" : null,
        };
    }

    /// <summary>Enough sessions, the last of them with a note.</summary>
    internal static Judged SessionsWithNote(LadderFacts facts)
    {
        Limit sessions = facts.Limit(LimitIds.FamiliariseSessions);
        List<SessionLog> logs = [.. facts.Sessions];
        bool noted = logs.Skip((int)sessions.Value - 1).Any(log => !string.IsNullOrWhiteSpace(log.Note));
        bool enough = logs.Count >= sessions.Value;
        return new Judged($"{sessions.Text} sessions are logged, with a note", enough && !noted ? Truth.NotKnown : Truths.From(enough),
            [new Input("Sessions logged", $"{logs.Count}"), new Input("Note", noted ? "yes" : "none")])
        {
            Limits = [sessions],
            Missing = enough && !noted ? "write a note in the session log" : null,
        };
    }
}
