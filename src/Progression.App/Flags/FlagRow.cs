using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.App.Flags;

/// <summary>A line of the checklist that the cursor can stand on: a question, or a flag that has none of its own to ask.</summary>
/// <param name="Flag">The flag.</param>
/// <param name="Question">The question; null for a flag that readings alone raise, or whose questions stand under other flags.</param>
public sealed record FlagRow(FlagState Flag, FlagQuestion? Question)
{
    /// <summary>The lines of some flags. A question that two flags share is asked once; one whose day has not come is not asked.</summary>
    /// <param name="flags">The flags, in the order in which they are asked.</param>
    /// <param name="operated">The day of the operation.</param>
    /// <param name="today">The present day.</param>
    public static ImmutableArray<FlagRow> Of(ImmutableArray<FlagState> flags, DateOnly operated, DateOnly today)
    {
        int day = PostOpWeek.DayOf(operated, today);
        HashSet<string> asked = [];
        return
        [
            .. flags.SelectMany(flag => flag.Flag.Questions
                .Where(question => !(question.FromDay > day) && asked.Add(question.Id))
                .Select(question => new FlagRow(flag, question))
                .DefaultIfEmpty(new FlagRow(flag, null))),
        ];
    }
}
