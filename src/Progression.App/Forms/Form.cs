using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Entry;

namespace Progression.App.Forms;

/// <summary>A column of text fields while it is typed: one of them has the caret, and may have been refused.</summary>
public sealed record Form
{
    private Form(ImmutableArray<FormLine> lines, int at) => (Lines, At) = (lines, at);

    /// <summary>The lines from top to bottom.</summary>
    public ImmutableArray<FormLine> Lines { get; private init; }

    /// <summary>The line with the caret, from 0; never one that is only shown.</summary>
    public int At { get; private init; }

    /// <summary>What was wrong with that line when it was last handed in; null when nothing was.</summary>
    public Problem? Problem { get; private init; }

    /// <summary>The line with the caret.</summary>
    public FormLine Current => Lines[At];

    /// <summary>Whether no line below takes text.</summary>
    public bool IsLast => By(1).At == At;

    /// <summary>Whether anything was typed that was not given.</summary>
    public bool IsTouched => Lines.Any(line => line.IsTouched);

    /// <summary>Whether it has more than one group of fields.</summary>
    public bool HasParts => Lines.Any(line => !line.IsShownOnly && line.Group != Current.Group);

    /// <summary>What was typed, line by line, to be kept and put back.</summary>
    public FormTexts Texts => new(Lines.Where(line => line.IsTouched).ToImmutableSortedDictionary(line => line.Id, line => line.Entry.Text, StringComparer.Ordinal), Current.Id);

    /// <summary>Whether there is something to take back, or something that was taken back.</summary>
    public bool CanTurn => IsTouched || TakenBack is not null;

    private FormTexts? TakenBack { get; init; }

    /// <summary>A form with the caret in its first field.</summary>
    /// <param name="lines">The lines; at least one takes text.</param>
    /// <exception cref="ArgumentException">No line takes text.</exception>
    public static Form Of(params ImmutableArray<FormLine> lines)
    {
        int first = lines.ToList().FindIndex(line => !line.IsShownOnly);
        return first < 0 ? throw new ArgumentException("A form has a line that takes text.", nameof(lines)) : new Form(lines, first);
    }

    /// <summary>The line with an id; null when the form has none.</summary>
    public FormLine? Line(string id) => Lines.FirstOrDefault(line => line.Id == id);

    /// <summary>What stands in a line, without spaces around it; empty for nothing and for a line the form does not have.</summary>
    public string TextOf(string id) => Line(id)?.Text ?? "";

    /// <summary>The form with the present line changed; a problem told before stands until the line is handed in again.</summary>
    public Form With(Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this with { Lines = Lines.SetItem(At, Current with { Entry = change(Current.Entry) }) };
    }

    /// <summary>The form with each line changed; the caret stays in its line.</summary>
    public Form With(Func<FormLine, FormLine> change) => this with { Lines = [.. Lines.Select(change)] };

    /// <summary>The form with the caret in the line with an id; the same form when it has none that takes text.</summary>
    public Form To(string id)
    {
        int at = Lines.ToList().FindIndex(line => line.Id == id && !line.IsShownOnly);
        return at < 0 ? this : this with { At = at, Problem = null };
    }

    /// <summary>The form with the caret in the next field in a direction, 1 down or -1 up; it stays at the ends.</summary>
    public Form By(int direction)
    {
        int at = At + direction;
        while (at >= 0 && at < Lines.Length && Lines[at].IsShownOnly)
        {
            at += direction;
        }

        return this with { At = at >= 0 && at < Lines.Length ? at : At, Problem = null };
    }

    /// <summary>The form with the caret in the first field of the next group in a direction, 1 down or -1 up; it stays at the ends.</summary>
    public Form ByGroup(int direction)
    {
        ImmutableArray<string> groups = [.. Lines.Where(line => !line.IsShownOnly).Select(line => line.Group).Distinct()];
        string group = groups[Math.Clamp(groups.IndexOf(Current.Group) + direction, 0, groups.Length - 1)];
        return To(Lines.First(line => line.Group == group && !line.IsShownOnly).Id);
    }

    /// <summary>The form with texts that were kept put in, and the caret where it was; texts of lines it does not have are left out.</summary>
    public Form With(FormTexts texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        return With(line => !line.IsShownOnly && texts.ById.TryGetValue(line.Id, out string? text) ? line with { Entry = LineEntry.Of(text) } : line).To(texts.At);
    }

    /// <summary>The form with every line as it was given; a form in which nothing was typed since then gets back what was taken away.</summary>
    public Form Turned() => IsTouched ? With(line => line with { Entry = LineEntry.Of(line.Given) }) with { TakenBack = Texts, Problem = null }
        : TakenBack is { } texts ? With(texts) with { TakenBack = null }
        : this;

    /// <summary>The form with the present line refused and the caret left in it.</summary>
    public Form Refused(Problem problem) => this with { Problem = problem };

    /// <summary>Hands the present line in: the caret goes on, or the line is refused.</summary>
    /// <param name="wrong">What is wrong with a line; null when nothing is.</param>
    /// <param name="settled">How a text that is good is written from then on, such as a day that was told in words; null leaves it as it is.</param>
    public Form HandIn(Func<FormLine, Problem?> wrong, Func<FormLine, string?>? settled = null)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        return wrong(Current) is { } problem ? Refused(problem)
            : Current.IsTouched && settled?.Invoke(Current) is { } text ? With((LineEntry _) => LineEntry.Of(text)).By(1)
            : By(1);
    }

    /// <summary>The form with the caret in the first line that is wrong, refused; null when none is. A line may have been left half done on the way.</summary>
    /// <param name="wrong">What is wrong with a line; null when nothing is.</param>
    public Form? FirstWrong(Func<FormLine, Problem?> wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        return Lines.Where(line => !line.IsShownOnly)
            .Select(line => wrong(line) is { } problem ? To(line.Id).Refused(problem) : null)
            .FirstOrDefault(refused => refused is not null);
    }
}
