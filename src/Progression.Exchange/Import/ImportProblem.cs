using Progression.Core.Entry;

namespace Progression.Exchange.Import;

/// <summary>One thing in a file that is refused or asked back, in words that let the person find and mend it. Every text is safe to show.</summary>
public sealed record ImportProblem
{
    /// <summary>A problem; its texts are made safe and what was found is shortened.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="wrong">What is wrong or odd, as a sentence without the value.</param>
    /// <param name="allowed">What is allowed or expected, with its unit and both ends.</param>
    /// <param name="found">What was found; empty when nothing was.</param>
    public ImportProblem(ImportPlace place, string wrong, string allowed, string found)
    {
        ArgumentNullException.ThrowIfNull(place);
        Place = place with { Field = Core.Entry.Found.Of(place.Field) };
        Wrong = SafeText.OneLine(wrong);
        Allowed = SafeText.OneLine(allowed);
        Found = Core.Entry.Found.Of(found);
    }

    /// <summary>Where it stands.</summary>
    public ImportPlace Place { get; }

    /// <summary>What is wrong or odd, as a sentence without the value.</summary>
    public string Wrong { get; }

    /// <summary>What is allowed or expected, with its unit and both ends.</summary>
    public string Allowed { get; }

    /// <summary>What was found, shortened; empty when nothing was.</summary>
    public string Found { get; }

    /// <summary>The first problem of a value that could not be read.</summary>
    public static ImportProblem Of(ImportPlace place, Problem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new(place, problem.Wrong, problem.Allowed, problem.Found);
    }

    /// <summary>One line: place, what is wrong, what is allowed, what was found.</summary>
    public override string ToString() => Place == ImportPlace.File ? Told : $"{Place}: {Told}";

    private string Told => $"{Wrong} Allowed: {Allowed}. Found: {(Found.Length == 0 ? "nothing" : $"\"{Found}\"")}.";
}
