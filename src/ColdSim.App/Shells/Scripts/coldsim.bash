# Completions of coldsim for bash:  source <(coldsim completions bash)

_coldsim() {
    local -a words=()
    local i word value
    for ((i = 1; i <= COMP_CWORD; i++)); do
        word=${COMP_WORDS[i]}
        word=${word#[\"\']}
        ((i < COMP_CWORD)) && word=${word%[\"\']}
        words+=("${word//\\/}")
    done
    COMPREPLY=()
    while IFS=$'\t' read -r value _; do
        if [[ $value == :files ]]; then
            while IFS= read -r value; do COMPREPLY+=("$value"); done < <(compgen -f -- "${words[-1]}")
        elif [[ -n $value ]]; then
            COMPREPLY+=("$value")
        fi
    done < <("${COMP_WORDS[0]}" __complete "${words[@]}" 2>/dev/null)
}

# As names of files, so that bash quotes a space; it would do nothing to a word without one.
complete -o filenames -F _coldsim coldsim
