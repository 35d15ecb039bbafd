using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads ladder.yaml: the five rungs, each once.</summary>
internal static class LadderReader
{
    private const int LongestShort = 8;
    private static readonly NumberRange Weeks = new(1, 26, "wk");

    public static ImmutableArray<LadderRung> Read(LibraryEntries entries)
    {
        ImmutableSortedDictionary<Rung, string> ids = Enum.GetValues<Rung>().ToImmutableSortedDictionary(rung => rung, IdOf);
        entries.AllowOnly([.. ids.Values]);
        entries.Require(ids.Values);
        ImmutableArray<LadderRung> ladder =
        [
            .. ids.Select(pair => (pair.Key, Entry: entries.All.FirstOrDefault(entry => entry.Id == pair.Value)))
                .Where(pair => pair.Entry is not null)
                .Select(pair => One(pair.Key, pair.Entry!.Fields))
                .OfType<LadderRung>(),
        ];
        CheckVolumes(entries, ladder);
        return ladder;
    }

    /// <summary>The id of a rung in the file: "high-volume".</summary>
    public static string IdOf(Rung rung) => EnumWords.Of(rung).Replace(' ', '-');

    private static LadderRung? One(Rung rung, Fields fields)
    {
        bool isLast = rung == Rung.Stopped;
        string? title = fields.Text("title", Need.Required, 30);
        string? shortName = fields.Text("short", Need.Required, LongestShort);
        Percentage? share = fields.As("session_share", Need.Required, QuantityText.Percentage.Within(isLast ? 0 : 1, isLast ? 0 : 100).Read);
        int? weeks = fields.Whole("expected_weeks", isLast ? Need.Optional : Need.Required, Weeks);
        if (isLast && weeks is not null)
        {
            fields.Refuse("expected_weeks", "The last rung does not end.", "nothing here", Number.Text(weeks.Value));
        }

        Source source = fields.Source();
        fields.Done();
        return title is null || shortName is null || share is null ? null : new LadderRung(rung, title, shortName, share, weeks, source);
    }

    /// <summary>From high volume on, a later rung must not ask for more sessions.</summary>
    private static void CheckVolumes(LibraryEntries entries, ImmutableArray<LadderRung> ladder)
    {
        foreach ((LadderRung above, LadderRung below) in ladder.Skip(1).Zip(ladder.Skip(2)).Where(pair => pair.Second.SessionShare > pair.First.SessionShare))
        {
            LibraryEntry first = entries.All.First(entry => entry.Id == IdOf(above.Rung));
            LibraryEntry second = entries.All.First(entry => entry.Id == IdOf(below.Rung));
            (Fields told, string wrong, string allowed, Percentage found) = LibraryEntry.BlamesFirst(first, second)
                ? (first.Fields, $"fewer sessions than the one after it, {below.Title}", $"at least {below.SessionShare}", above.SessionShare)
                : (second.Fields, $"more sessions than the one before it, {above.Title}", $"at most {above.SessionShare}", below.SessionShare);
            told.Refuse("session_share", $"This rung has {wrong}.", allowed, found.ToString());
        }
    }
}
