using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Core.Entry;

namespace Progression.App.Commands;

/// <summary>Where commands write: data to one stream, messages to the other, every line harmless to a terminal.</summary>
/// <remarks>A reader that closed the pipe early (as <c>head</c> does) is not an error: what follows is dropped.</remarks>
public sealed class CommandOutput(TextWriter data, TextWriter messages)
{
    private const int BrokenPipe = 32;
    private const int WindowsBrokenPipe = unchecked((int)0x8007006D);
    private const int WindowsPipeClosing = unchecked((int)0x800700E8);

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>One or more lines of the answer.</summary>
    public void Data(string text) => Write(data, text);

    /// <summary>The answer as JSON; every character outside printable ASCII is escaped.</summary>
    public void Json(JsonNode answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        Write(data, answer.ToJsonString(Indented));
    }

    /// <summary>One or more lines about the answer.</summary>
    public void Message(string text) => Write(messages, text);

    /// <summary>One line for each problem, named after the command.</summary>
    public void Problems(string command, IEnumerable<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        foreach (Problem problem in problems)
        {
            Message($"progression {command}: {SafeText.OneLine(problem.ToString())}");
        }
    }

    private static void Write(TextWriter writer, string text)
    {
        try
        {
            foreach (string line in SafeText.Lines(text))
            {
                writer.WriteLine(line);
            }

            writer.Flush();
        }
        catch (IOException fault) when (fault.HResult is BrokenPipe or WindowsBrokenPipe or WindowsPipeClosing)
        {
        }
    }
}
