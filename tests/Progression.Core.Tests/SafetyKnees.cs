using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests;

/// <summary>Knees with notes that close red flags, and with logged sessions.</summary>
internal static class SafetyKnees
{
    /// <summary>A note by the physician closes the flag.</summary>
    internal static Knee Noted(this Knee knee, string flag, int day) =>
        knee with { Case = knee.Case with { FlagNotes = knee.Case.FlagNotes.Add(new FlagNote(flag, Knee.Day(day), "Physician MN", "seen and settled")) } };

    /// <summary>A session with exercises only; null is not logged.</summary>
    internal static Knee Logged(this Knee knee, int day, int? before = null, int? after = null, int? morning = null, SkinCheck? skin = null) => knee with
    {
        Case = knee.Case with
        {
            Sessions = knee.Case.Sessions.Add(new SessionLog(Knee.Day(day), 0) { PainBefore = before, PainAfter = after, PainNextMorning = morning, Skin = skin }),
        },
    };

    internal static ImmutableArray<FlagState> Flags(this Knee knee, int on, ClinicalLibrary? library = null) => RedFlags.Of(knee.Case, library ?? Knee.Library, Knee.Day(on));

    internal static FlagState Flag(this Knee knee, string id, int on, ClinicalLibrary? library = null) => knee.Flags(on, library).Single(state => state.Flag.Id == id);
}
