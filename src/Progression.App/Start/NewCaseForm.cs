using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Entry;

namespace Progression.App.Start;

/// <summary>The form of a new case while it is typed.</summary>
/// <param name="Lines">One line for each <see cref="NewCaseField"/>.</param>
/// <param name="Field">The line with the caret.</param>
/// <param name="Problem">What was wrong with that line when it was last handed in; null when nothing was.</param>
public sealed record NewCaseForm(ImmutableArray<LineEntry> Lines, NewCaseField Field, Problem? Problem)
{
    /// <summary>The last line.</summary>
    public const NewCaseField Last = NewCaseField.Procedure;

    /// <summary>The form with nothing typed but the usual procedure.</summary>
    public static NewCaseForm Blank { get; } = new(
        [.. Enum.GetValues<NewCaseField>().Select(field => LineEntry.Of(field == NewCaseField.Procedure ? "Total knee replacement" : ""))], NewCaseField.Code, null);

    /// <summary>What stands in a line.</summary>
    public string TextOf(NewCaseField field) => Lines[(int)field].Text;

    /// <summary>The form with the present line changed; a problem told before stands until the line is handed in again.</summary>
    public NewCaseForm With(Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this with { Lines = Lines.SetItem((int)Field, change(Lines[(int)Field])) };
    }

    /// <summary>The form with the caret in another line.</summary>
    public NewCaseForm At(NewCaseField field) => this with { Field = field, Problem = null };
}
