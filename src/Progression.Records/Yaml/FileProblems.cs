using System.Collections.Immutable;
using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>Collects what is wrong in one file. Past <see cref="Most"/> problems the rest is not kept: the first ones are enough to start mending.</summary>
internal sealed class FileProblems(string file)
{
    /// <summary>Most problems kept for one file.</summary>
    public const int Most = 100;

    private readonly List<FileProblem> _problems = [];

    /// <summary>How many problems were found so far, those not kept included, so that a reader can tell whether its own part was good.</summary>
    public int Count { get; private set; }

    /// <summary>Whether no more problems are kept.</summary>
    public bool IsFull => _problems.Count >= Most;

    /// <summary>Adds a problem; every text is made safe and what was found is shortened.</summary>
    /// <param name="line">The line from 1, or null for the whole file.</param>
    /// <param name="problem">What is wrong.</param>
    public void Add(int? line, Problem problem)
    {
        Count++;
        if (!IsFull)
        {
            _problems.Add(new FileProblem(
                SafeText.OneLine(file), line, Found.Of(problem.Field), problem.Wrong, SafeText.OneLine(problem.Allowed), Found.Of(problem.Found)));
        }
    }

    /// <summary>The problems from the top of the file to its end; those of one line in the order in which they were found.</summary>
    public ImmutableArray<FileProblem> InOrder() => [.. _problems.OrderBy(problem => problem.Line ?? 0)];
}
