using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;

namespace Progression.App.Commands.Reassess;

/// <summary>How a measure is named on the command line: by its id, with hyphens or underscores, or by a short word.</summary>
internal static class MeasureWords
{
    /// <summary>The short words, for the help.</summary>
    internal const string Help = "knee-flexion, knee-extension, lag, strength, or the id of a measure such as six-minute-walk.";

    private static readonly ImmutableArray<(string Word, string Measure)> Short =
    [
        ("knee-flexion", MeasureIds.FlexionActive), ("knee-extension", MeasureIds.ExtensionPassive), ("lag", MeasureIds.Lag), ("strength", MeasureIds.PreOpShare),
    ];

    /// <summary>The measure, or what is allowed.</summary>
    internal static Entered<Measure> Read(string field, string? text, ClinicalLibrary library)
    {
        string word = (text ?? "").Trim();
        string id = Short.FirstOrDefault(one => one.Word == word.Replace('_', '-')).Measure ?? word.Replace('-', '_');
        if (library.Measures.TryGetValue(id, out Measure? measure))
        {
            return Entered<Measure>.Good(measure);
        }

        IEnumerable<string> known = Short.Select(one => one.Word).Concat(library.Measures.Keys);
        string meant = NearestWord.To(word, known) is string near ? $" Did you mean \"{near}\"?" : "";
        return Entered<Measure>.Bad(new Problem(field, "There is no such measure." + meant, string.Join(", ", known), Found.Of(word)));
    }
}
