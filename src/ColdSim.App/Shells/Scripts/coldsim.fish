# Completions of coldsim for fish:  coldsim completions fish | source

function __coldsim_next
    set -l words (commandline -opc)
    set -l typed (commandline -ct)
    for line in ($words[1] __complete $words[2..-1] "$typed" 2>/dev/null)
        if test "$line" = :files
            __fish_complete_path "$typed"
        else
            echo $line
        end
    end
end

complete -c coldsim -f -a '(__coldsim_next)'
