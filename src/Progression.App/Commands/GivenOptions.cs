using System.Collections.Immutable;
using System.CommandLine;
using Progression.Core.Entry;

namespace Progression.App.Commands;

/// <summary>Reads the options that are on the command line and collects what is wrong with them. An option that is not there is null.</summary>
internal sealed class GivenOptions(ParseResult line)
{
    /// <summary>Every problem so far, in the order of reading.</summary>
    internal List<Problem> Problems { get; } = [];

    internal T? Take<T>(Option<string?> option, Func<string, string?, Entered<T>> read)
        where T : class
    {
        if (line.GetResult(option) is null)
        {
            return null;
        }

        Entered<T> entered = read(option.Name, line.GetValue(option));
        Problems.AddRange(entered.Problems);
        return entered.Value;
    }

    internal int? Count(Option<string?> option, int most) => Take(option, (field, text) => WholeNumberText.Read(field, text, 1, most))?.Count;

    internal T? Word<T>(Option<string?> option, ImmutableArray<(string Word, T Value)> words)
        where T : struct => Take(option, (field, text) => WordText.Read(field, text, words))?.Value;
}
