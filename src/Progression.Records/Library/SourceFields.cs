using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>What every entry says about where it comes from.</summary>
internal static class SourceFields
{
    private const int LongestSource = 240;

    /// <summary>The source and standing of an entry. Both are asked for; a stand-in with problems is given when one is missing.</summary>
    public static Source Source(this Fields fields)
    {
        string? text = fields.Text("source", Need.Required, LongestSource);
        Standing? standing = fields.OneOf<Standing>("standing", Need.Required);
        return new Source(text ?? "", standing ?? Standing.CommonPractice);
    }
}
