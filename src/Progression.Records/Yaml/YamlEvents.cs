using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Progression.Records.Yaml;

/// <summary>
/// The parser's events. On some damaged texts the parser fails with an exception that is meant for programmers (an operation that is not valid,
/// for instance) or ends before the end of the document; here every failure of the parser is one of YAML, with the place last reached.
/// </summary>
internal sealed class YamlEvents(string text) : IParser
{
    private readonly Parser _parser = new(new StringReader(text));

    public ParsingEvent? Current => _parser.Current;

    public bool MoveNext()
    {
        Mark reached = Current?.End ?? Mark.Empty;
        try
        {
            return _parser.MoveNext() ? true : throw new EndOfStreamException();
        }
        catch (Exception failure) when (failure is not YamlException and not OutOfMemoryException)
        {
            throw new YamlException(reached, reached, "The text cannot be parsed.", failure);
        }
    }
}
