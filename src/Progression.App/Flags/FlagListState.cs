using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.App.Flags;

/// <summary>The red-flag checklist at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record FlagListState
{
    private FlagListState()
    {
    }

    /// <summary>What the checklist reads.</summary>
    public required FlagDesk Desk { get; init; }

    /// <summary>The answers of today by sign, those kept already included; a question that is missing was not asked.</summary>
    public ImmutableSortedDictionary<string, Answer> Answers { get; private init; } = ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal);

    /// <summary>The notes written here.</summary>
    public ImmutableArray<FlagNote> Notes { get; private init; } = [];

    /// <summary>The flags with these answers and notes.</summary>
    public ImmutableArray<FlagState> Flags { get; private init; } = [];

    /// <summary>The lines of the checklist.</summary>
    public ImmutableArray<FlagRow> Rows { get; private init; } = [];

    /// <summary>The line under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public FlagMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public FlagMode HelpFor { get; init; }

    /// <summary>Lines of the checklist below, or of the help page, that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The note being typed; null outside <see cref="FlagMode.Note"/>.</summary>
    public Form? Note { get; init; }

    /// <summary>Whether anything was answered or closed here.</summary>
    public bool IsTouched { get; private init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The line under the cursor; null when the library has no flags.</summary>
    public FlagRow? Chosen => Rows.IsEmpty ? null : Rows[Math.Clamp(Index, 0, Rows.Length - 1)];

    /// <summary>The case with the answers and the notes.</summary>
    public Case Patient
    {
        get
        {
            Case noted = Desk.Case with { FlagNotes = [.. Desk.Case.FlagNotes, .. Notes] };
            Assessment? kept = Today(Desk);
            return Answers.IsEmpty || (kept is not null && Answers.All(kept.SignsSeen.Contains)) ? noted : noted with { Assessments = [.. Visits(kept).OrderBy(visit => visit.Date)] };
        }
    }

    /// <summary>The checklist of today.</summary>
    /// <param name="desk">What it reads.</param>
    public static FlagListState Open(FlagDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        FlagListState blank = new FlagListState { Desk = desk }.Judged();
        // On the first question, so that y and n answer at once.
        blank = blank with { Index = Math.Max(0, blank.Rows.ToList().FindIndex(row => row.Question is not null)) };
        ImmutableHashSet<string> asked = [.. blank.Rows.Select(row => row.Question?.Id).OfType<string>()];
        return Today(desk) is { } kept ? blank with { Answers = kept.SignsSeen.RemoveRange(kept.SignsSeen.Keys.Where(sign => !asked.Contains(sign))) } : blank;
    }

    /// <summary>The checklist as it was left, on the case as it is now: what was saved in between stays.</summary>
    public FlagListState On(FlagDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        return (this with { Desk = desk, Notes = [.. Notes.Except(desk.Case.FlagNotes)] }).Judged();
    }

    /// <summary>The checklist with a question answered; null takes the answer back.</summary>
    public FlagListState With(string question, Answer? answer) =>
        (this with { Answers = answer is { } given ? Answers.SetItem(question, given) : Answers.Remove(question), IsTouched = true, Status = "" }).Judged();

    /// <summary>The checklist with a note that closes a flag.</summary>
    public FlagListState With(FlagNote note) => (this with { Notes = Notes.Add(note), IsTouched = true }).Judged();

    /// <summary>The checklist with the cursor on another line; it stays at the ends.</summary>
    public FlagListState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Rows.Length - 1)), Scroll = 0, Status = "" };

    private FlagListState Judged()
    {
        ImmutableArray<FlagState> flags = Desk.FlagsOf(Patient);
        return this with { Flags = flags, Rows = FlagRow.Of(flags, Desk.Case.Operation.Date, Desk.Today) };
    }

    private static Assessment? Today(FlagDesk desk) => desk.Case.Assessments.FirstOrDefault(visit => visit.Date == desk.Today);

    // An answer taken back here was given here, or stands in the visit and stays there: what was kept is answered anew, not removed.
    private IEnumerable<Assessment> Visits(Assessment? kept) => kept is null
        ? Desk.Case.Assessments.Append(new Assessment(Desk.Today, ImmutableSortedDictionary.Create<string, Reading>(StringComparer.Ordinal), Answers))
        : Desk.Case.Assessments.Remove(kept).Append(kept with { SignsSeen = kept.SignsSeen.SetItems(Answers) });
}
