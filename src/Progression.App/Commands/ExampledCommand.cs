using System.CommandLine;

namespace Progression.App.Commands;

/// <summary>A command whose help ends in examples and notes.</summary>
/// <param name="name">The word typed.</param>
/// <param name="description">What it does, in a sentence.</param>
/// <param name="closing">What follows the list of options, line by line as it is to be read.</param>
internal sealed class ExampledCommand(string name, string description, string closing) : Command(name, description)
{
    /// <summary>What follows the list of options.</summary>
    public string Closing { get; } = closing;
}
