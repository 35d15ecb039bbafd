using Progression.App.Actions;

namespace Progression.App.Forms;

/// <summary>A form in words: one question a line.</summary>
public static class FormAloud
{
    /// <summary>What the present line asks.</summary>
    /// <param name="form">The form.</param>
    /// <param name="allowed">What is allowed in it.</param>
    /// <param name="last">What it was last time; empty for nothing.</param>
    public static ScreenQuestion Asks(Form form, string allowed, string last = "")
    {
        ArgumentNullException.ThrowIfNull(form);
        return new(Title(form.Current)) { Now = form.Current.Text, Allowed = allowed, Last = last, Refused = form.Problem is { } problem ? $"{problem}" : "" };
    }

    /// <summary>The answer that was given last, so that it can be heard; nothing where the line above is empty.</summary>
    /// <param name="form">The form.</param>
    /// <param name="beside">What stands beside a line; empty for nothing.</param>
    public static IEnumerable<string> Answered(Form form, Func<FormLine, string> beside)
    {
        ArgumentNullException.ThrowIfNull(form);
        FormLine? above = form.Lines.Take(form.At).LastOrDefault(line => !line.IsShownOnly);
        return above is { IsTouched: true, Text.Length: > 0 } ? [Line(above, beside)] : [];
    }

    /// <summary>Every line with what stands in it.</summary>
    /// <param name="form">The form.</param>
    /// <param name="beside">What stands beside a line; empty for nothing.</param>
    public static IEnumerable<string> Read(Form form, Func<FormLine, string> beside)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(beside);
        string group = "";
        foreach (FormLine line in form.Lines)
        {
            if (line.Group != group)
            {
                yield return (group = line.Group) + ".";
            }

            yield return Line(line, beside);
        }
    }

    /// <summary>The form at the line that the words name; null where there is none.</summary>
    public static Form? Go(Form form, string words)
    {
        ArgumentNullException.ThrowIfNull(form);
        FormLine[] lines = [.. form.Lines.Where(line => !line.IsShownOnly)];
        return SpokenNames.Fitting(words, lines.Select(line => line.Title)) is { Count: > 0 } fitting ? form.To(lines[fitting[0]].Id) : null;
    }

    private static string Line(FormLine line, Func<FormLine, string> beside)
    {
        string unit = line.Text.Length > 0 && line.Unit.Length > 0 && !line.Text.EndsWith(line.Unit, StringComparison.Ordinal) && line.Unit.All(char.IsLetter) ? " " + line.Unit : "";
        string told = beside(line);
        return $"{line.Title}: {(line.Text.Length == 0 ? line.IsShownOnly ? "" : "empty" : line.Text + unit)}{(told.Length == 0 ? "" : $"; {told}")}.".Replace(": ; ", ": ", StringComparison.Ordinal);
    }

    private static string Title(FormLine line) => line.Unit.Length == 0 ? line.Title : $"{line.Title}, {line.Unit}";
}
