using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>One thing wrong in a file a person wrote, in words that let them find and mend it. Every text is safe to show on a terminal.</summary>
/// <param name="File">The file as the person named it.</param>
/// <param name="Line">The line, counted from 1; null when the file as a whole is meant.</param>
/// <param name="Field">The path of the field, for instance "assessments[2].date"; empty when no field is meant.</param>
/// <param name="Wrong">What is wrong, as a sentence without the value.</param>
/// <param name="Allowed">What is allowed, with its unit and both ends.</param>
/// <param name="Found">What was found, shortened; empty when nothing was.</param>
public sealed record FileProblem(string File, int? Line, string Field, string Wrong, string Allowed, string Found)
{
    /// <summary>One line: file, line, field, what is wrong, what is allowed, what was found.</summary>
    public override string ToString() =>
        $"{File}{(Line is int line ? $":{line}" : "")}: "
        + (Field.Length == 0 ? $"{Wrong} Allowed: {Allowed}. Found: {Quoted}." : new Problem(Field, Wrong, Allowed, Found).ToString());

    private string Quoted => Found.Length == 0 ? "nothing" : $"\"{Found}\"";
}
