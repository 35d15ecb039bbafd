using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads what begins a file that is entered into a case: its form, and whose it is.</summary>
internal static class EntryHead
{
    /// <summary>Refuses a file of another form, of another case or of the other knee. Code and side may be left out.</summary>
    public static void Read(Fields fields, string schema, Case patient)
    {
        fields.OneOf("schema", Need.Required, [schema]);
        if (fields.As("code", Need.Optional, CaseFileReader.CodeText) is { } code && code != patient.Code)
        {
            fields.Refuse("code", "This file is of another case.", patient.Code.Text, code.Text);
        }

        if (fields.OneOf<Side>("side", Need.Optional) is Side side && side != patient.Operation.Side)
        {
            string right = EnumWords.Of(patient.Operation.Side);
            fields.Refuse("side", $"The {right} knee is the operated one; it looks as if the sides were swapped, and nothing was taken from the file.", right, EnumWords.Of(side));
        }
    }
}
