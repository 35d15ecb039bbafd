using System.CommandLine;
using Progression.Core.Clinic;
using Progression.Core.Entry;
using Progression.Records.Clinic;

namespace Progression.App.Commands.Clinic;

/// <summary><c>progression clinic</c>: whether a folder of records is set up as a clinic needs it, and what the person who asks is in it.</summary>
internal sealed class ClinicCommand(CommandOutput output, StorePlace stores)
{
    private const string CheckClosing = """

        Looks at the folder, its clinic.yaml, its files and the account that asks, and opens nothing. Each line is good, or says
        what is wrong and which command mends it. Exit code 0 when all is good, 78 when something is wrong.

        Examples:
          progression clinic check --store /srv/progression
          progression example clinic > clinic.yaml
        """;

    private const string MeClosing = """

        The account is the one the operating system vouches for; no name is typed anywhere. Exit code 77 when the records may not
        be opened.

        Example:
          progression clinic me
        """;

    internal Command Build() => new("clinic", "Checks how the records of a clinic are set up, and says what you are in it.") { Check(), Me() };

    private ExampledCommand Check()
    {
        ExampledCommand command = new("check", "Says of everything that has to hold whether it does, with commands that mend it.", CheckClosing) { stores.Option };
        command.SetAction(line =>
        {
            ClinicAccess access = stores.Access(stores.Folder(line));
            output.Data(CheckText(access));
            return access.IsGood ? ExitCode.Good : ExitCode.BadConfiguration;
        });
        return command;
    }

    private ExampledCommand Me()
    {
        ExampledCommand command = new("me", "Says under which account you work, what you are in the clinic, and what you may do.", MeClosing) { stores.Option };
        command.SetAction(line =>
        {
            ClinicAccess access = stores.Access(stores.Folder(line));
            if (access is not { IsGood: true, Person: { } person })
            {
                output.Message(string.Join('\n', access.Refusal.Split('\n').Select(one => "progression clinic me: " + SafeText.OneLine(one))));
                return ExitCode.NotPermitted;
            }

            output.Data(MeText(access, person));
            return ExitCode.Good;
        });
        return command;
    }

    private static string CheckText(ClinicAccess access) => string.Join('\n',
    [
        SafeText.OneLine($"The records in {access.Folder}, as {(access.Person is { } person ? Is(person) : "nobody the system vouches for")}:"),
        .. access.Conditions.SelectMany(Lines).Select(SafeText.OneLine),
        access.IsGood ? "They may be opened." : "They are not opened until everything is good.",
    ]);

    private static IEnumerable<string> Lines(Condition condition) => condition.Holds
        ? [$"good   {condition.Asked}"]
        : [$"WRONG  {condition.Asked}", $"       {condition.Found}", $"       Cure: {condition.Cure}"];

    private static string MeText(ClinicAccess access, ClinicPerson person)
    {
        ClinicAct[] acts = Enum.GetValues<ClinicAct>();
        return string.Join('\n',
            new[]
            {
                $"{Is(person)} (account number {person.UserId})",
                access.Clinic is null ? "Records of one person, with nobody to review them." : access.Clinic.Name.Length > 0 ? $"Clinic: {access.Clinic.Name}" : "Records of a clinic.",
                Sentence("You may", acts.Where(person.May)),
                Sentence("You may not", acts.Where(act => !person.May(act))),
            }.Where(line => line.Length > 0).Select(SafeText.OneLine));
    }

    private static string Is(ClinicPerson person) =>
        $"{person.Name}, {(person.Roles.IsEmpty ? "who has no role in this clinic" : string.Join(" and ", person.Roles.Select(role => role.ToString().ToLowerInvariant())))}";

    private static string Sentence(string start, IEnumerable<ClinicAct> acts) =>
        string.Join(", ", acts.Select(Permission.Words)) is { Length: > 0 } words ? $"{start}: {words}." : "";
}
