using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Forms;

/// <summary>How the answer to a question is typed and shown: y, n or u.</summary>
public static class YesNo
{
    /// <summary>Shown behind a field that takes an answer.</summary>
    public const string Unit = "y/n/u";

    /// <summary>What is accepted, in words.</summary>
    public const string Allowed = "y for yes, n for no, u for asked and not known";

    private static readonly ImmutableArray<(string Word, Answer Value)> Words =
    [
        ("y", Answer.Yes), ("yes", Answer.Yes), ("n", Answer.No), ("no", Answer.No), ("u", Answer.Unknown), ("unknown", Answer.Unknown),
    ];

    /// <summary>Reads an answer.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; blank is a missing answer, which is refused.</param>
    public static Entered<Choice<Answer>> Read(string field, string text) =>
        WordText.Read(field, text, Words) is { Value: not null } good
            ? good
            : Entered<Choice<Answer>>.Bad(new Problem(field, "This is not an answer.", Allowed, Found.Of(text)));

    /// <summary>The letter of an answer.</summary>
    public static string Letter(Answer answer) => answer switch { Answer.Yes => "y", Answer.No => "n", _ => "u" };

    /// <summary>The word of an answer; null is a question that was not asked.</summary>
    public static string Word(Answer? answer) => answer switch { Answer.Yes => "yes", Answer.No => "no", Answer.Unknown => "not known", _ => "not asked" };
}
